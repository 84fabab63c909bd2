import { polynomial } from "./polynomial.ts";

export const quadraticLog = polynomial(
  "quadratic-log",
  "A valley with even sides per doubling of dose: steep below, slow above.",
  2,
  true,
  true,
);
