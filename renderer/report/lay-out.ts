import { slicer } from "../worker/next-task.ts";

/** so many elements are laid out in one go */
const most = 150;
/** a drawing is one thing */
const whole = new Set(["FIGURE", "svg"]);

const sizeOf = (node: Node) => (node instanceof Element ? node.querySelectorAll("*").length + 1 : 0);

/**
 * Moves a parsed paper's nodes to where they are shown, a few at a time: a report is laid out for longer than the screen may
 * stand still. `given` is asked between the pieces whether to go on; false where it was left off.
 */
export async function layOut(from: Node, to: Element, given: () => boolean): Promise<boolean> {
  const giveWay = slicer();
  let waiting = 0;
  async function move(source: Node, target: Element): Promise<boolean> {
    for (const node of [...source.childNodes]) {
      const size = sizeOf(node);
      if (node instanceof Element && size > most && !whole.has(node.tagName)) {
        const shell = node.cloneNode(false) as Element;
        target.append(shell);
        if (!(await move(node, shell))) return false;
        continue;
      }
      target.append(node);
      waiting += size;
      if (waiting < most) continue;
      waiting = 0;
      // Asked for its height, the page lays out the pieces now, within this slice.
      to.getBoundingClientRect();
      await giveWay();
      if (!given()) return false;
    }
    return true;
  }
  return move(from, to);
}
