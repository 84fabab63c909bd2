import { polynomial } from "./polynomial.ts";

export const linear = polynomial("linear", "Every step of dose does the same.", 1, false, false);
