import type { LibraryRow, LibrarySearch, SortColumn } from "./row.ts";

/** Text for comparing: without capitals and accents. */
export function foldText(text: string): string {
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
}

/** Everything of a row that words are looked for in, folded. */
function wordsOf(row: LibraryRow): string {
  const parts = [
    row.studyName,
    row.fileName,
    row.seriesLabel,
    row.streamLabel,
    row.sludgeClass,
    row.productA,
    row.productB,
    row.approvedBy,
    row.reason,
  ];
  return foldText(parts.filter((part) => part !== null).join("\n"));
}

const collator = new Intl.Collator("en", { numeric: true, sensitivity: "base" });

type Key = string | number | null;

interface Order {
  /** what groups rows, the same way round in both directions */
  group?: (row: LibraryRow) => Key[];
  /** what is sorted by; the first is what the column shows */
  keys: (row: LibraryRow) => Key[];
}

const orders: Record<SortColumn, Order> = {
  study: { keys: (row) => [row.studyName, row.seriesLabel] },
  sludge: { keys: (row) => [row.sludgeClass, row.streamLabel] },
  product: { keys: (row) => [row.productA, row.productB] },
  dose: { keys: (row) => [row.doseAKgPerT, row.doseBKgPerT] },
  turbidity: { keys: (row) => [row.turbidity] },
  tss: { keys: (row) => [row.filtrateTssMgPerL] },
  cake: { keys: (row) => [row.cakePct] },
  // A cost without disposal would win every comparison, and currencies do not compare at all.
  cost: {
    group: (row) => [row.currency, row.disposalCost === null ? 1 : 0],
    keys: (row) => [row.totalCost],
  },
  by: { keys: (row) => [row.approvedBy || null] },
  date: { keys: (row) => [row.approvedAt === null ? null : Date.parse(row.approvedAt)] },
};

function compareKeys(left: Key[], right: Key[]): number {
  for (let i = 0; i < left.length; i++) {
    const [a, b] = [left[i]!, right[i]!];
    if (a === b) continue;
    if (a === null) return -1;
    if (b === null) return 1;
    const order =
      typeof a === "number" && typeof b === "number" ? a - b : collator.compare(String(a), String(b));
    if (order !== 0) return order;
  }
  return 0;
}

const exactly = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/** Puts rows in the order of a column; rows without its value come last in both directions. */
function compareRows(column: SortColumn, down: boolean): (a: LibraryRow, b: LibraryRow) => number {
  const { group, keys } = orders[column];
  return (a, b) => {
    const [left, right] = [keys(a), keys(b)];
    const lacking = Number(left[0] === null) - Number(right[0] === null);
    if (lacking !== 0) return lacking;
    const grouped = group ? compareKeys(group(a), group(b)) : 0;
    if (grouped !== 0) return grouped;
    return (
      (down ? -1 : 1) * compareKeys(left, right) ||
      collator.compare(a.studyName, b.studyName) ||
      collator.compare(a.seriesLabel, b.seriesLabel) ||
      exactly(a.fileName, b.fileName) ||
      exactly(a.seriesId ?? "", b.seriesId ?? "")
    );
  };
}

/** The rows that answer a search, in its order. */
export function searchRows(rows: readonly LibraryRow[], search: LibrarySearch): LibraryRow[] {
  const words = foldText(search.text)
    .split(/\s+/)
    .filter((word) => word !== "");
  return rows
    .filter((row) => {
      if (search.product !== null && row.productA !== search.product && row.productB !== search.product)
        return false;
      if (search.sludgeClass !== null && row.sludgeClass !== search.sludgeClass) return false;
      if (search.onlyApproved && row.standing === "no dose approved") return false;
      if (words.length === 0) return true;
      const text = wordsOf(row);
      return words.every((word) => text.includes(word));
    })
    .sort(compareRows(search.sort.column, search.sort.down));
}
