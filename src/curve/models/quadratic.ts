import { polynomial } from "./polynomial.ts";

export const quadratic = polynomial("quadratic", "A valley (or hill) with even sides.", 2, false, true);
