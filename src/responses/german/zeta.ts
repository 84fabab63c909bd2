import type { ZetaWords } from "../zeta.ts";

export const responseZeta: ZetaWords = {
  label: "Zetapotential",
  standard: "wie das Gerät es zeigt",
  read: "abgelesen",
  head: "Zeta, mV",
  onScreen: (mV) => `Zetapotential ${mV} mV`,
  slot: "Zetapotential",
  field: "Zetapotential, mV",
};
