import { defineStore } from "pinia";
import { computed } from "vue";
import { z } from "zod";
import { useDrafts } from "./drafts.ts";
import { useSelection } from "./selection.ts";

const lapSchema = z.strictObject({ atS: z.number().min(0), ml: z.number().nullable() });

/** Where the running of a series stands: kept by the host outside the history, so that a crash or reload goes on there. */
const positionSchema = z.strictObject({
  open: z.boolean(),
  pass: z.enum(["jars", "dry"]),
  jarId: z.string().nullable(),
  step: z.int().min(0),
  /** when the running timer began, ISO; null while none runs */
  startedAt: z.string().nullable(),
  laps: z.array(lapSchema).max(40),
});
export type RunPosition = z.infer<typeof positionSchema>;
export type Lap = z.infer<typeof lapSchema>;

const start: RunPosition = { open: false, pass: "jars", jarId: null, step: 0, startedAt: null, laps: [] };

/** The position of the selected series' run. */
export const useRun = defineStore("run", () => {
  const drafts = useDrafts();
  const selection = useSelection();
  const place = computed(() => `run ${selection.seriesId ?? ""}`);

  const position = computed<RunPosition>(() => {
    const text = drafts.drafts[place.value]?.text;
    if (text === undefined) return start;
    try {
      const parsed = positionSchema.safeParse(JSON.parse(text));
      return parsed.success ? parsed.data : start;
    } catch {
      return start;
    }
  });

  /** Moves the run on; written at once, since a timer cannot be measured again. */
  function move(to: Partial<RunPosition>): void {
    drafts.keep(place.value, JSON.stringify({ ...position.value, ...to }), "", 0);
  }

  return { position, move };
});
