import type { useFormat } from "../../stores/format.ts";

/** Doses in words, repeats counted: "4.6 (2 times) and 5.8". */
export function doseList(doses: number[], format: ReturnType<typeof useFormat>): string {
  const counts = new Map<string, number>();
  for (const dose of doses) {
    const text = format.shown(dose, "doseKgPerT", 3);
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts].map(([dose, count]) => (count > 1 ? `${dose} (${count} times)` : dose)).join(" and ");
}
