import { polynomial } from "./polynomial.ts";

export const cubicLog = polynomial("cubic-log", 3, true, true);
