import { polynomial } from "./polynomial.ts";

export const linear = polynomial("linear", 1, false, false);
