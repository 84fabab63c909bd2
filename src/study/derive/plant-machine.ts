import { checkMachine, type MachineCheck, type MachineCheckName } from "../../plant/machine-check.ts";
import { sourceOf } from "../../methods/methods.ts";
import { unitText, type QuantityKind } from "../../units/display.ts";
import { machineChainWords } from "../../words/machine-chain.ts";
import { plantInputWords } from "../../words/plant-inputs.ts";
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

const quantities: Record<MachineCheckName, QuantityKind> = {
  loading: "loadingKgPerHPerM",
  hydraulic: "flowM3PerH",
  "feed-window": "percent",
  "solids-threshold": "percent",
  inorganic: "percent",
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
    const { title, formula } = machineChainWords[check.name];
    const quantity = quantities[check.name];
    const made: Made = {
      formula,
      inputs: [
        ...(check.name === "loading"
          ? [
              { name: plantInputWords.load, value: feed.load.value, unit: "kg/h" },
              { name: machineChainWords.effectiveWidth, value: machine.effectiveWidthM, unit: "m" },
              { name: machineChainWords.sludgeClass, value: machine.loadingClass || null, unit: "" },
            ]
          : check.name === "inorganic"
            ? [{ name: machineChainWords.volatileShare, value: volatile, unit: "%" }]
            : check.name === "hydraulic"
              ? [{ name: plantInputWords.feedFlow, value: feed.flowM3PerH, unit: "m³/h" }]
              : [{ name: plantInputWords.totalSolids, value: feed.totalSolidsPct, unit: "%" }]),
        ...(check.low === null
          ? []
          : [
              { name: machineChainWords.lowestAllowed, value: check.low, unit: unitText(quantity, "metric") },
            ]),
        ...(check.high === null
          ? []
          : [
              {
                name: machineChainWords.highestAllowed,
                value: check.high,
                unit: unitText(quantity, "metric"),
              },
            ]),
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
