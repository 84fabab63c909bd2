import { area } from "./language.ts";

/** A machine's own limits against a feed case: each check by title and how its figure was made. */
export const machineChainWords = area("machineChain", {
  loading: { title: "Loading", formula: "dry-solids load / effective width" },
  hydraulic: { title: "Feed flow", formula: "feed flow" },
  "feed-window": { title: "Feed solids, window", formula: "total solids of the feed" },
  "solids-threshold": { title: "Feed solids, threshold", formula: "total solids of the feed" },
  inorganic: { title: "Inorganic share", formula: "100 - volatile share" },
  effectiveWidth: "effective width",
  sludgeClass: "class of sludge",
  volatileShare: "volatile share",
  lowestAllowed: "lowest allowed",
  highestAllowed: "highest allowed",
});
