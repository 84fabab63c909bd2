import { sampleRoomWords } from "../../../src/words/sample-room.ts";

export const sludgeClasses = [
  { value: "primary", label: sampleRoomWords.sludge.primary },
  { value: "excess", label: sampleRoomWords.sludge.excess },
  { value: "mixed", label: sampleRoomWords.sludge.mixed },
  { value: "digested", label: sampleRoomWords.sludge.digested },
  { value: "aerobic", label: sampleRoomWords.sludge.aerobic },
  { value: "flotation", label: sampleRoomWords.sludge.flotation },
  { value: "livestock", label: sampleRoomWords.sludge.livestock },
  { value: "water-works", label: sampleRoomWords.sludge["water-works"] },
  { value: "other", label: sampleRoomWords.sludge.other },
];
