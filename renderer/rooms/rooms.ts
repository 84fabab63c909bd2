import { shellWords } from "../../src/words/shell.ts";
import type { Room } from "../../src/study/derive/strip-types.ts";

/** The rooms in the order of the job, with the name each is called by. */
export const rooms: { room: Room; name: string }[] = [
  { room: "sample", name: shellWords.rooms.sample },
  { room: "bench", name: shellWords.rooms.bench },
  { room: "curves", name: shellWords.rooms.curves },
  { room: "dose", name: shellWords.rooms.dose },
  { room: "plant", name: shellWords.rooms.plant },
  { room: "record", name: shellWords.rooms.record },
];
