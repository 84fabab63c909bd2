import type { Opened } from "../../src/contract.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import type { Kind, StudyState } from "../../src/study/schema/records.ts";
import { growingTable } from "../../src/study/tables.ts";
import { bindTo, call } from "../client.ts";
import { slicer } from "../worker/next-task.ts";

/**
 * The opened study with its large tables, which come in parts since reading a large answer keeps the screen still. Where
 * somebody edits meanwhile, it begins anew. A refusal says why the study cannot be had.
 */
export async function wholeStudy(opened: Opened): Promise<Outcome<Opened>> {
  let now = opened;
  for (;;) {
    bindTo(now.opening);
    if (now.later.length === 0) return good(now);
    const state = { ...now.state };
    const filled = await fill(state, now);
    if (filled.ok) return good({ ...now, state, later: [] });
    if (filled.code !== "stale") return bad(filled.message);
    const again = await call("study.current", {});
    if (!again.ok) return bad(again.message);
    if (!again.value) return bad(filled.message);
    now = again.value;
  }
}

/** The fields by whose records those of a large table are looked for. */
const parents: Partial<Record<Kind, string[]>> = { jar: ["seriesId"], reading: ["jarId"] };

async function fill(
  state: StudyState,
  { later, seq }: Opened,
): Promise<{ ok: true } | { ok: false; code: string; message: string }> {
  const tables = state as unknown as Record<Kind, object>;
  const rest = slicer();
  for (const kind of later) {
    const { table, add } = growingTable(parents[kind] ?? []);
    tables[kind] = table;
    for (let from = 0, more = true; more;) {
      const part = await call("study.records", { kind, seq, from });
      if (!part.ok) return part;
      add(part.value.records);
      from += part.value.records.length;
      ({ more } = part.value);
      await rest();
    }
  }
  return { ok: true };
}
