import type { machineChainWords } from "../machine-chain.ts";

export const machineChain: typeof machineChainWords = {
  loading: { title: "Belastung", formula: "TR-Fracht / wirksame Breite" },
  hydraulic: { title: "Zulaufstrom", formula: "Zulaufstrom" },
  "feed-window": { title: "TR des Zulaufs, Fenster", formula: "Trockenrückstand des Zulaufs" },
  "solids-threshold": { title: "TR des Zulaufs, Schwelle", formula: "Trockenrückstand des Zulaufs" },
  inorganic: { title: "Anorganischer Anteil", formula: "100 - Glühverlust" },
  effectiveWidth: "wirksame Breite",
  sludgeClass: "Schlammart",
  volatileShare: "Glühverlust",
  lowestAllowed: "kleinster zulässiger Wert",
  highestAllowed: "größter zulässiger Wert",
};
