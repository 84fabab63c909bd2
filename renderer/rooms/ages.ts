import { sampleRoomWords } from "../../src/words/sample-room.ts";
import { oldSampleHours } from "../../src/study/derive/quality/sample-checks.ts";

/** How long ago something was, in words; a sludge sample past a day is said to be old (common practice, no source). */
export function ageWords(at: string, now: string): { words: string; old: boolean } {
  const minutes = Math.max(0, Math.round((Date.parse(now) - Date.parse(at)) / 60_000));
  const hours = Math.floor(minutes / 60);
  const { age } = sampleRoomWords;
  const words =
    hours >= 48
      ? age.days(Math.floor(hours / 24))
      : hours >= 1
        ? age.hours(hours, minutes % 60)
        : age.minutes(minutes);
  const old = hours >= oldSampleHours;
  return { words: old ? age.tooOld(words) : words, old };
}
