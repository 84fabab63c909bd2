/** What was in use at a moment, by how many edits. Bytes, and counts of the page's nodes and listeners. */
export interface Sample {
  minute: number;
  edits: number;
  pageHeap: number;
  nodes: number;
  listeners: number;
  hostRss: number;
  hostHeap: number;
}

const measured = ["pageHeap", "nodes", "listeners", "hostRss", "hostHeap"] as const;
type Measured = (typeof measured)[number];

/**
 * How much each may grow with 1,000 edits and still be called steady (common practice, no source). An edit itself stays
 * known: its number on the undo line, its words in the list of the record. That is some hundred bytes.
 */
const mostPerThousand: Record<Measured, number> = {
  pageHeap: 1_000_000,
  nodes: 200,
  listeners: 50,
  hostRss: 10_000_000,
  hostHeap: 2_000_000,
};

export interface Slope {
  name: Measured;
  perThousandEdits: number;
  most: number;
  steady: boolean;
}

/**
 * The growth of each figure with the edits, as the median of the slopes between every two samples, so that a moment at
 * which something large happened to be in use decides nothing. The first third is warming up and left out.
 */
export function slopes(samples: readonly Sample[]): Slope[] {
  const used = samples.slice(Math.floor(samples.length / 3));
  return measured.map((name) => {
    const between = used
      .flatMap((from, i) =>
        used
          .slice(i + 1)
          .filter((to) => to.edits > from.edits)
          .map((to) => ((to[name] - from[name]) / (to.edits - from.edits)) * 1000),
      )
      .sort((a, b) => a - b);
    const perThousandEdits = between[Math.floor(between.length / 2)] ?? NaN;
    const most = mostPerThousand[name];
    return { name, perThousandEdits, most, steady: perThousandEdits <= most };
  });
}
