import { slicer } from "../worker/next-task.ts";

/** an element with fewer elements in it is laid out in one go, as are a table and a drawing, which are one thing */
const most = 150;
const whole = new Set(["TABLE", "FIGURE", "svg"]);

/**
 * Moves a parsed paper's nodes to where they are shown, a few at a time: a report is laid out for longer than the screen may
 * stand still. `given` is asked between the pieces whether to go on; false where it was left off.
 */
export async function layOut(from: Node, to: Element, given: () => boolean): Promise<boolean> {
  const giveWay = slicer();
  async function move(source: Node, target: Element): Promise<boolean> {
    for (const node of [...source.childNodes]) {
      const large =
        node instanceof Element && !whole.has(node.tagName) && node.querySelectorAll("*").length > most;
      if (large) {
        const shell = node.cloneNode(false) as Element;
        target.append(shell);
        if (!(await move(node, shell))) return false;
      } else {
        target.append(node);
        // Asked for its height, the page lays out the piece now, within this slice.
        to.getBoundingClientRect();
      }
      await giveWay();
      if (!given()) return false;
    }
    return true;
  }
  return move(from, to);
}
