import type { RuleName } from "../study/schema/choice.ts";

/** What each rule for picking a dose is called. */
export const ruleWords: Record<RuleName, string> = {
  "cheapest-in-limits": "cheapest within all limits",
  minimum: "best of a response",
  knee: "knee of a response",
  "near-least-cost": "lowest within 1 % of least cost",
  "least-cost": "least total cost",
  desirability: "most desirable",
  own: "our own judgement",
};
