/**
 * As many characters of text as one answer may hold, roughly: a photo alone is some hundred thousand of them, and a part
 * of hundreds of photos would keep host and screen still however few records it counts.
 */
export const charactersAtOnce = 1_000_000;

/** Roughly how many characters a value comes to as JSON; it is quick, since a long text is not looked through. */
export function charactersOf(value: unknown): number {
  if (typeof value === "string") return value.length + 2;
  if (typeof value !== "object" || value === null) return 8;
  let sum = 2;
  for (const [key, inner] of Object.entries(value)) sum += key.length + 4 + charactersOf(inner);
  return sum;
}

/** The items from this place that go into one answer: at most so many, and one at least, however large it is. */
export function oneAnswerOf<T>(items: readonly T[], from: number, most: number): T[] {
  let characters = 0;
  let end = from;
  for (const item of items.slice(from, from + most)) {
    characters += charactersOf(item);
    if (end > from && characters > charactersAtOnce) break;
    end += 1;
  }
  return items.slice(from, end);
}
