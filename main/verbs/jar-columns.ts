import { numberAt, type Table } from "../../src/exchange/table.ts";
import { good, type Outcome } from "../../src/outcome.ts";

/** The columns that say which jar, bucket and running order a row belongs to, where the file has them. */
export function optionalColumns(
  table: Table,
  row: Table["rows"][number],
): Outcome<{ jar: string | null; block: string | null; order: number | null }> {
  const text = (head: string) => {
    const column = table.heads.indexOf(head);
    return column < 0 ? null : row.cells[column] || null;
  };
  const orderColumn = table.heads.indexOf("order");
  const order = orderColumn < 0 ? good(null) : numberAt(table, row, orderColumn);
  if (!order.ok) return order;
  return good({ jar: text("jar"), block: text("block"), order: order.value });
}
