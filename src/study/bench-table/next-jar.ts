import type { SeriesChain } from "../derive/jars.ts";

/**
 * Names and places for new jars of a series, one at a call: the next free number above `after` as its name, and the
 * place behind the last in the running order.
 */
export function nextJar(chain: SeriesChain, after: number): () => { label: string; order: number } {
  const used = new Set(chain.jars.map(({ jar }) => jar.label));
  let order = Math.max(0, ...chain.jars.map(({ jar }) => jar.order));
  let number = after;
  return () => {
    do number += 1;
    while (used.has(String(number)));
    order += 1;
    return { label: String(number), order };
  };
}
