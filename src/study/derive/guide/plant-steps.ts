import type { StudyState } from "../../schema/records.ts";
import { decisionChain } from "../decision.ts";
import { missingFor, type PlantPolymer } from "../plant-polymer.ts";
import { plantChain, type PlantChain } from "../plant.ts";
import { asSentence, type GuideAim, type StepState } from "./step.ts";

/** From the picked dose to the pump's settings. */
export function plantSteps(state: StudyState, seriesId: string | null): StepState[] {
  const decision = seriesId ? (decisionChain(state, seriesId)?.decision ?? null) : null;
  const plant =
    seriesId && state.series[seriesId]
      ? plantChain(state, seriesId, decision ? { a: decision.doseAKgPerT, b: decision.doseBKgPerT } : null)
      : null;
  return [
    {
      key: "dose",
      title: "Pick a dose and approve it",
      done: decision !== null,
      why: "Look at the limits and the cost at each dose, then approve one with a reason and your name.",
      aim: { room: "dose", target: "pick dose a" },
    },
    feedStep(plant),
    pumpStep(plant, seriesId),
    settingsStep(plant),
  ];
}

const at = (target: string): GuideAim => ({ room: "plant", target });

/** The first entry of each way a flow is known by. */
const flowEntry = {
  meter: "flowM3PerH",
  timed: "timedVolumeM3",
  level: "tankAreaM2",
  difference: "supplyM3PerH",
} as const;

function feedStep(plant: PlantChain | null): StepState {
  const known = plant?.cases.some(({ feed }) => feed.missing === null) ?? false;
  const open = plant?.cases[0];
  return {
    key: "feed",
    title: "Enter the feed",
    done: known,
    why: open
      ? asSentence(open.feed.missing ?? "the feed is known")
      : "How much sludge the machine is fed in an hour turns the dose into a rate.",
    aim: at(open ? `feed ${open.feedCase.id} ${flowEntry[open.feedCase.flowFrom]}` : "add feed"),
  };
}

/** The entry that what is missing of a polymer's make-down is typed into. */
function makeDownAim({ product, benchProduct, makeDown }: PlantPolymer): GuideAim {
  if (!makeDown || !product) return at(`add makedown ${benchProduct.id}`);
  if (product.activePct === null) return { room: "sample", target: `product ${product.id} activePct` };
  if (product.form !== "dry" && product.densityKgPerL === null)
    return { room: "sample", target: `product ${product.id} densityKgPerL` };
  const field = makeDown.solutionActivePct === null ? "solutionActivePct" : "solutionDensityKgPerL";
  return at(`makedown ${makeDown.id} ${field}`);
}

function pumpStep(plant: PlantChain | null, seriesId: string | null): StepState {
  const step = { key: "pump", title: "Make-down and pump" };
  const polymers = plant?.polymers ?? [];
  if (plant?.missing && polymers.length === 0)
    return {
      ...step,
      done: false,
      why: asSentence(plant.missing),
      aim: { room: "bench", target: `series ${seriesId} stockA` },
    };
  const lacking = polymers.find((polymer) => missingFor(polymer) !== null);
  if (lacking)
    return { ...step, done: false, why: asSentence(missingFor(lacking)!), aim: makeDownAim(lacking) };
  const unpumped = polymers.find(({ pump }) => !pump?.line.ok);
  if (!unpumped)
    return {
      ...step,
      done: polymers.length > 0,
      why: "Say how the plant makes the polymer down, and draw its pump down at a few settings.",
      aim: at("add pump"),
    };
  const { pump } = unpumped;
  return {
    ...step,
    done: false,
    why: pump
      ? `${asSentence(`${pump.pump.label}: ${pump.line.ok ? "" : pump.line.message}`)} Catch what it gives in a timed minute, at two settings or more.`
      : `Add the pump that moves ${unpumped.product?.label ?? "the polymer"}.`,
    aim: at(pump ? `add draw-down ${pump.pump.id}` : "add pump"),
  };
}

function settingsStep(plant: PlantChain | null): StepState {
  const usual = plant?.cases.find(({ feedCase }) => feedCase.size === "usual") ?? plant?.cases[0];
  const set =
    usual !== undefined &&
    usual.polymers.length > 0 &&
    usual.polymers.every(({ setting }) => setting?.pct != null);
  const refused = usual?.polymers.find(({ setting }) => setting && setting.pct === null);
  return {
    key: "settings",
    title: "Read the pump settings",
    done: set,
    why: refused
      ? "The flow that is needed lies outside the settings the pump was drawn down at: take draw-downs further out, or change the solution's strength."
      : usual && !usual.rates.ok
        ? asSentence(usual.rates.message)
        : "With a dose, the feed and a pump line the setting follows.",
    aim: at("settings"),
  };
}
