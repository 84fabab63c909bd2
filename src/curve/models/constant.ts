import { polynomial } from "./polynomial.ts";

export const constant = polynomial("constant", 0, false, false);
