import { polynomial } from "./polynomial.ts";

export const cubic = polynomial("cubic", "A valley whose two sides differ.", 3, false, true);
