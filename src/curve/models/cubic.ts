import { polynomial } from "./polynomial.ts";

export const cubic = polynomial("cubic", 3, false, true);
