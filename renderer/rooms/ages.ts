import { oldSampleHours } from "../../src/study/derive/quality/sample-checks.ts";

/** How long ago something was, in words; a sludge sample past a day is said to be old (common practice, no source). */
export function ageWords(at: string, now: string): { words: string; old: boolean } {
  const minutes = Math.max(0, Math.round((Date.parse(now) - Date.parse(at)) / 60_000));
  const hours = Math.floor(minutes / 60);
  const words =
    hours >= 48
      ? `${Math.floor(hours / 24)} days old`
      : hours >= 1
        ? `${hours} h ${minutes % 60} min old`
        : `${minutes} min old`;
  const old = hours >= oldSampleHours;
  return { words: old ? `${words}: past a day sludge has changed, take a fresh sample` : words, old };
}
