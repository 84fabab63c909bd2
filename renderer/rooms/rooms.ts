import type { Room } from "../../src/study/derive/strip-types.ts";

/** The rooms in the order of the job, with the name each is called by. */
export const rooms: { room: Room; name: string }[] = [
  { room: "sample", name: "Sample" },
  { room: "bench", name: "Bench" },
  { room: "curves", name: "Curves" },
  { room: "dose", name: "Dose" },
  { room: "plant", name: "Plant" },
  { room: "record", name: "Record" },
];
