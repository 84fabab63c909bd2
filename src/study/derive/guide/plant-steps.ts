import { guideWords as words } from "../../../words/guide.ts";
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
      title: words.titles.dose,
      done: decision !== null,
      why: words.dose,
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
    title: words.titles.feed,
    done: known,
    why: open
      ? `${asSentence(open.feed.missing ?? words.feed.known)} ${words.feed.needed}`
      : words.feed.needed,
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

/** What is missing of a polymer's make-down, and for the neat density why it is asked for only now. */
function lackWords(polymer: PlantPolymer): string {
  const { product } = polymer;
  return product && makeDownAim(polymer).target === `product ${product.id} densityKgPerL`
    ? words.pump.density(product.label)
    : asSentence(missingFor(polymer)!);
}

function pumpStep(plant: PlantChain | null, seriesId: string | null): StepState {
  const step = { key: "pump" as const, title: words.titles.pump };
  const polymers = plant?.polymers ?? [];
  if (plant?.missing && polymers.length === 0)
    return {
      ...step,
      done: false,
      why: asSentence(plant.missing),
      aim: { room: "bench", target: `series ${seriesId} stockA` },
    };
  const lacking = polymers.find((polymer) => missingFor(polymer) !== null);
  if (lacking) return { ...step, done: false, why: lackWords(lacking), aim: makeDownAim(lacking) };
  const unpumped = polymers.find(({ pump }) => !pump?.line.ok);
  if (!unpumped)
    return {
      ...step,
      done: polymers.length > 0,
      why: words.pump.needed,
      aim: at("add pump"),
    };
  const { pump } = unpumped;
  return {
    ...step,
    done: false,
    why: pump
      ? words.pump.draw(asSentence(words.pump.of(pump.pump.label, pump.line.ok ? "" : pump.line.message)))
      : words.pump.add(unpumped.product?.label ?? words.pump.thePolymer),
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
    title: words.titles.settings,
    done: set,
    why: refused
      ? words.settings.outside
      : usual && !usual.rates.ok
        ? asSentence(usual.rates.message)
        : words.settings.needed,
    aim: at("settings"),
  };
}
