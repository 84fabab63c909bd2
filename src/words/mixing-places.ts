import { area } from "./language.ts";

/** The plant's mixing held against the jars': each figure by title. */
export const mixingPlaceWords = area("mixingPlaces", {
  benchGt: "Jars, G x t",
  plantGt: "Plant, G x t",
  ratio: "Plant over jars",
  matchFast: "Fast phase that would match",
  plantG: "Plant, G",
  retention: "Retention in the mixer",
  pipeDelay: "Time in the pipe behind it",
  pipeNeeded: "Pipe that the delay wanted needs",
  nominal:
    "G is nominal: the viscosity of water is used, sludge is thicker and thins under shear. Factor of two: common practice, no source.",
});
