/** The polymer whose computed columns, its dose and that as supplied, stand behind a typed column. */
export const computedAfter = (key: string): "A" | "B" | null =>
  key === "syringeA" ? "A" : key === "syringeB" ? "B" : null;
