/**
 * A maker of short sortable ids from a moment (milliseconds) and a word of chance (small letters and digits): each id is
 * later than the one before, and two makers of the same moment do not collide.
 */
export function idMaker(stampMs: number, chance: string): () => string {
  let count = 0;
  const stamp = stampMs.toString(36);
  return () => {
    count += 1;
    return `${stamp}${count.toString(36).padStart(4, "0")}-${chance}`;
  };
}
