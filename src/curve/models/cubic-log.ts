import { polynomial } from "./polynomial.ts";

export const cubicLog = polynomial(
  "cubic-log",
  "A valley whose two sides differ per doubling of dose.",
  3,
  true,
  true,
);
