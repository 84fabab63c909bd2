import { bad, good, type Outcome } from "../../outcome.ts";
import { parseNumber, type DecimalMark } from "../../units/number-entry.ts";

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
    if (cells.length !== 2) return bad(`Line ${index + 1}: enter a volume and a time, with a blank between.`);
    const [volume, seconds] = cells.map((cell) => parseNumber(cell, mark));
    if (!volume!.ok) return bad(`Line ${index + 1}, volume: ${volume!.message}`);
    if (!seconds!.ok) return bad(`Line ${index + 1}, time: ${seconds!.message}`);
    if (volume!.value <= 0 || seconds!.value <= 0)
      return bad(`Line ${index + 1}: volume and time must be above 0.`);
    const before = points.at(-1);
    if (before && (volume!.value <= before.volumeMl || seconds!.value <= before.seconds))
      return bad(`Line ${index + 1}: both volume and time must rise from line to line.`);
    points.push({ volumeMl: volume!.value, seconds: seconds!.value });
  }
  if (points.length < 3) return bad("Enter at least three volumes with their times.");
  return good(points);
}
