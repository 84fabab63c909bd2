import { area } from "./language.ts";

/** What a plan of jars refuses or warns of. Names such as `low` are the fields of the plan. */
export const jarPlanWords = area("jarPlan", {
  lowHigh: "low must be below high.",
  secondLowHigh: "second.low must be below second.high.",
  secondMissing: (design: string) => `second is missing: a ${design} plan has two polymers.`,
  secondNotWanted: (design: string) =>
    `second goes with fix-one, factorial and central-composite plans, not with ${design}.`,
  geometricLow: "low must be above 0 for a geometric ladder: a no-polymer jar is counted apart.",
  bracketingNeeds: "a bracketing ladder needs guess and stepPct.",
  stepsOutside: (outside: number, steps: number) =>
    `${outside} of ${steps} steps around the guess fall outside the lowest and highest dose and are left out.`,
  fewSteps: "fewer than two steps lie between low and high.",
  threeLevels: "A factorial plan has three levels of each polymer, whatever steps says.",
  smallVolume: (letter: string, volumeMl: string, syringeMl: number) =>
    `The smallest volume of solution ${letter}, ${volumeMl} mL, is too small to be accurate in a ${syringeMl} mL syringe: use a weaker stock or a smaller syringe.`,
  largeVolume: (volumeMl: string) =>
    `The largest volume, ${volumeMl} mL, is too large for the jar: make a stronger stock.`,
  muchAdded: (volumeMl: string, sampleMl: number) =>
    `Up to ${volumeMl} mL are added to ${sampleMl} mL, more than 10 %: make a stronger stock, and keep the blank water so that all jars are diluted alike.`,
});
