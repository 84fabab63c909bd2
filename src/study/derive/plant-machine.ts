import { checkMachine, type MachineCheck, type MachineCheckName } from "../../plant/machine-check.ts";
import { sourceOf } from "../../methods/methods.ts";
import type { QuantityKind } from "../../units/display.ts";
import type { RecordOf } from "../schema/records.ts";
import { figure, missingFigure, type Figure, type Made } from "./figure.ts";
import type { FeedChain } from "./plant-feed.ts";
import type { SampleChain } from "./sample.ts";

type Machine = RecordOf<"machine">;

export interface MachineLine {
  check: MachineCheck;
  title: string;
  figure: Figure;
  quantity: QuantityKind;
}

const titles: Record<MachineCheckName, { title: string; quantity: QuantityKind; formula: string }> = {
  loading: { title: "Loading", quantity: "loadingKgPerHPerM", formula: "dry-solids load / effective width" },
  hydraulic: { title: "Feed flow", quantity: "flowM3PerH", formula: "feed flow" },
  "feed-window": { title: "Feed solids, window", quantity: "percent", formula: "total solids of the feed" },
  "solids-threshold": {
    title: "Feed solids, threshold",
    quantity: "percent",
    formula: "total solids of the feed",
  },
  inorganic: { title: "Inorganic share", quantity: "percent", formula: "100 - volatile share" },
};

/** The loading that counts for the machine's chosen class of sludge, or null. */
function loadingOf(machine: Machine): number | null {
  return machine.loadings.find((one) => one.sludgeClass === machine.loadingClass)?.kgPerHPerM ?? null;
}

/** A machine's own limits against one feed case. */
export function machineChain(machine: Machine, feed: FeedChain, sample: SampleChain | null): MachineLine[] {
  const volatile = sample?.volatileSolids.value ?? null;
  const inorganicPct = volatile === null ? null : 100 - volatile;
  const checks = checkMachine(
    { ...machine, loadingKgPerHPerM: loadingOf(machine) },
    {
      dsKgPerH: feed.load.value,
      feedM3PerH: feed.flowM3PerH,
      totalSolidsPct: feed.totalSolidsPct,
      inorganicPct,
    },
  );
  return checks.map((check) => {
    const { title, quantity, formula } = titles[check.name];
    const made: Made = {
      formula,
      inputs: [
        ...(check.name === "loading"
          ? [
              { name: "dry-solids load", value: feed.load.value, unit: "kg/h" },
              { name: "effective width", value: machine.effectiveWidthM, unit: "m" },
              { name: "class of sludge", value: machine.loadingClass || null, unit: "" },
            ]
          : check.name === "inorganic"
            ? [{ name: "volatile share", value: volatile, unit: "%" }]
            : check.name === "hydraulic"
              ? [{ name: "feed flow", value: feed.flowM3PerH, unit: "m³/h" }]
              : [{ name: "total solids", value: feed.totalSolidsPct, unit: "%" }]),
        ...(check.low === null ? [] : [{ name: "lowest allowed", value: check.low, unit: "" }]),
        ...(check.high === null ? [] : [{ name: "highest allowed", value: check.high, unit: "" }]),
      ],
      source: sourceOf("loading"),
    };
    return {
      check,
      title,
      quantity,
      figure:
        check.value === null
          ? missingFigure(quantity, check.words, made)
          : figure(quantity, check.value, made),
    };
  });
}
