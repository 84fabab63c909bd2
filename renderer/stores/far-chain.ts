// The far end of the chain, loaded behind the first room: nothing of it is needed to type a sample's numbers.
export { unpackWorkings } from "../worker/pack.ts";
export { choiceChain } from "../../src/study/derive/choice.ts";
export { plantChain } from "../../src/study/derive/plant.ts";
export { stripSegments } from "../../src/study/derive/strip.ts";
