/** Room that a label takes in a drawing, in user units. */
interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** width of one letter, roughly; how far a line of letters reaches over and under its foot */
const letter = 5.4;
const over = 9;
const under = 3;

function boxOf(text: string, x: number, y: number, anchor: "start" | "middle" | "end"): Box {
  const width = text.length * letter;
  const left = anchor === "start" ? x : anchor === "middle" ? x - width / 2 : x - width;
  return { left, right: left + width, top: y - over, bottom: y + under };
}

/** Keeps labels apart: what is taken stays taken, and a new label gets the first of its places that is free. */
export function labelRoom(within: Box): {
  take(text: string, x: number, y: number, anchor: "start" | "middle" | "end"): void;
  /** the first free place for the middle of a text, which is then taken; null where there is none */
  find(text: string, places: { x: number; y: number }[]): { x: number; y: number } | null;
} {
  const taken: Box[] = [];
  const free = (box: Box) =>
    box.left >= within.left &&
    box.right <= within.right &&
    box.top >= within.top &&
    box.bottom <= within.bottom &&
    taken.every(
      (one) => box.right < one.left || box.left > one.right || box.bottom < one.top || box.top > one.bottom,
    );
  return {
    take(text, x, y, anchor) {
      taken.push(boxOf(text, x, y, anchor));
    },
    find(text, places) {
      const found = places.find(({ x, y }) => free(boxOf(text, x, y, "middle"))) ?? null;
      if (found) taken.push(boxOf(text, found.x, found.y, "middle"));
      return found;
    },
  };
}
