import { polynomial } from "./polynomial.ts";

export const constant = polynomial("constant", "The dose makes no difference.", 0, false, false);
