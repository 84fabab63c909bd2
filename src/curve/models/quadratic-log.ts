import { polynomial } from "./polynomial.ts";

export const quadraticLog = polynomial("quadratic-log", 2, true, true);
