import type { StudyState } from "../../schema/records.ts";
import { decisionChain } from "../decision.ts";
import { benchSteps } from "./bench-steps.ts";
import { plantSteps } from "./plant-steps.ts";
import type { CurvesSoFar, GuideStep, StepKey, StepState } from "./step.ts";

export interface GuideInput {
  /** the series and sample the window is about */
  seriesId: string | null;
  sampleId: string | null;
  curves: CurvesSoFar;
}

export interface Guide {
  /** the series whose way this is */
  seriesId: string | null;
  steps: GuideStep[];
  /** the step to take next; null when the first settings are made */
  next: GuideStep | null;
}

/**
 * The way of a study from its sample to its first pump settings, with what is done and what comes next. It follows the
 * series whose dose is approved, else the one looked at, and passes over what an approved dose no longer needs.
 */
export function guideOf(state: StudyState, input: GuideInput): Guide {
  const decided = Object.keys(state.series)
    .sort()
    .find((id) => decisionChain(state, id) !== null);
  const own = input.seriesId !== null && decisionChain(state, input.seriesId) !== null;
  const seriesId = own ? input.seriesId : (decided ?? input.seriesId);
  const steps = wayOf(state, { ...input, seriesId });
  const settled = settledAt(steps);
  const next = steps.findIndex(({ done }, index) => !done && index > settled);
  return {
    seriesId,
    steps: steps.map((step, index) => ({
      ...step,
      standing: step.done ? "done" : index < settled ? "passed" : index === next ? "next" : "later",
    })),
    next: next < 0 ? null : { ...steps[next]!, standing: "next" },
  };
}

/** Every step of one series' way, in order, whether or not it is done. */
export function wayOf(state: StudyState, { seriesId, sampleId, curves }: GuideInput): StepState[] {
  return [...benchSteps(state, seriesId, sampleId, curves), ...plantSteps(state, seriesId)];
}

/** Where an approved dose or a setting makes what came before it unneeded; -1 where nothing does. */
const settledAt = (steps: StepState[]) =>
  steps.findLastIndex(({ key, done }) => (key === "dose" || key === "settings") && done);

/**
 * The first thing that is missing on the way to a step, the step itself included; null where nothing is. A dose may be
 * approved without a curve, so what lies behind it does not wait for a curve that was refused.
 */
export function firstMissing(steps: StepState[], until: StepKey, curves: CurvesSoFar): StepState | null {
  const way = steps.slice(0, steps.findIndex(({ key }) => key === until) + 1);
  const settled = settledAt(way);
  const missing = way.filter(({ done }, index) => !done && index > settled);
  return missing.find(({ key }) => key !== "curve" || until === "curve" || curves.word !== "refused") ?? null;
}
