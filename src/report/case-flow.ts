import type { CaseChain } from "../study/derive/plant.ts";

/** The feed flow of a case in m³/h: as derived where a case derives it, else as entered. */
export function caseFlow(chain: CaseChain): number | null {
  const derived: unknown = "flowM3PerH" in chain ? chain.flowM3PerH : undefined;
  return typeof derived === "number" ? derived : chain.feedCase.flowM3PerH;
}
