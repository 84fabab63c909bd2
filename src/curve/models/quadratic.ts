import { polynomial } from "./polynomial.ts";

export const quadratic = polynomial("quadratic", 2, false, true);
