import { bad, good, type Outcome } from "../../outcome.ts";
import { parseNumber, type DecimalMark } from "../../units/number-entry.ts";
import { benchTableWords } from "../../words/bench-table.ts";

/**
 * Volumes and times as somebody types or pastes them: one pair a line, mL then s, parted by a tab, a semicolon or
 * blanks. The first line that is not such a pair is named.
 */
export function filtrationLines(
  text: string,
  mark: DecimalMark,
): Outcome<{ volumeMl: number; seconds: number }[]> {
  const points: { volumeMl: number; seconds: number }[] = [];
  for (const [index, line] of text.split(/\r\n?|\n/).entries()) {
    if (line.trim() === "") continue;
    const cells = line.trim().split(/\s*[;\t]\s*|\s+/);
    if (cells.length !== 2) return bad(benchTableWords.filtration.pair(index + 1));
    const [volume, seconds] = cells.map((cell) => parseNumber(cell, mark));
    if (!volume!.ok) return bad(benchTableWords.filtration.volume(index + 1, volume!.message));
    if (!seconds!.ok) return bad(benchTableWords.filtration.time(index + 1, seconds!.message));
    if (volume!.value <= 0 || seconds!.value <= 0)
      return bad(benchTableWords.filtration.aboveZero(index + 1));
    const before = points.at(-1);
    if (before && (volume!.value <= before.volumeMl || seconds!.value <= before.seconds))
      return bad(benchTableWords.filtration.rising(index + 1));
    points.push({ volumeMl: volume!.value, seconds: seconds!.value });
  }
  if (points.length < 3) return bad(benchTableWords.filtration.few);
  return good(points);
}
