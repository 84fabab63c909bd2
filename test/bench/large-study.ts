import { createStudyFile, openStudyFile, type Place } from "../../main/storage/study-file.ts";
import { applyCommand, type SimpleCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import type { Change } from "../../src/study/history.ts";
import { emptyState, recordSchemas, type AnyRecord } from "../../src/study/schema/records.ts";

export interface LargeStudy {
  series: number;
  jarsPerSeries: number;
  /** entries of the history in all: first one for each record, then edits of syringe volumes */
  changes: number;
}

/**
 * Writes an invented study of any size with a whole history: the demo, then every series, jar and reading by an entry
 * of its own, then edits. Two readings a jar, every second jar three.
 */
export function writeLargeStudy(path: string, size: LargeStudy, now: string): void {
  const created = createStudyFile(path);
  if (!created.ok) throw new Error(created.message);
  let state = emptyState();
  const steps: { change: Change; touched: Place[] }[] = [];
  const step = (command: Change["command"], inverse: Change["inverse"], touched: Place[]) => {
    steps.push({
      change: {
        seq: steps.length + 1,
        at: now,
        by: "Mara T.",
        command,
        inverse,
        undoes: null,
        redoes: null,
        why: "",
      },
      touched,
    });
  };
  for (const command of demoCommands(now)) {
    const applied = applyCommand(state, command);
    if (!applied.ok) throw new Error(applied.message);
    state = applied.value.state;
    step(command, applied.value.inverse, applied.value.touched);
  }
  const tables = {
    ...state,
    series: { ...state.series },
    jar: { ...state.jar },
    reading: { ...state.reading },
  };
  const add = (kind: "series" | "jar" | "reading", record: { id: string } & Record<string, unknown>) => {
    (tables[kind] as Record<string, AnyRecord>)[record.id] = recordSchemas[kind].parse(record) as AnyRecord;
    step({ do: "add", kind, record }, { do: "remove", kind, id: record.id }, [{ kind, id: record.id }]);
  };
  for (let s = 0; s < size.series; s++) {
    add("series", { ...state.series["series-1"]!, id: `large-${s}`, label: `Large ${s}` });
    for (let j = 0; j < size.jarsPerSeries; j++) {
      const id = `large-${s}-${j}`;
      const dose = 2 + (8 * j) / size.jarsPerSeries;
      add("jar", {
        id,
        seriesId: `large-${s}`,
        label: `${j + 1}`,
        order: j + 1,
        plannedDoseAKgPerT: dose,
        syringeAMl: Math.round(dose * 62.13) / 10,
      });
      const turbidity = 40 + 12 * (dose - 6) ** 2 + ((7 * j + 3 * s) % 11);
      add("reading", {
        id: `${id}-1`,
        jarId: id,
        result: { kind: "turbidity", value: turbidity, dilution: 1 },
      });
      add("reading", { id: `${id}-2`, jarId: id, result: { kind: "cake-ts", pct: 18 + ((j + s) % 7) / 3 } });
      if (j % 2 === 0)
        add("reading", { id: `${id}-3`, jarId: id, result: { kind: "cst", seconds: 9 + ((j * s) % 13) } });
    }
  }
  const jarIds = Object.keys(tables.jar).filter((id) => id.startsWith("large-"));
  for (let i = 0; steps.length < size.changes; i++) {
    const id = jarIds[(i * 7919) % jarIds.length]!;
    const jar = tables.jar[id]!;
    const syringeAMl = Math.round((jar.syringeAMl! + (i % 2 === 0 ? 0.1 : -0.1)) * 10) / 10;
    const set = (value: number | null): SimpleCommand => ({
      do: "set",
      kind: "jar",
      id,
      fields: { syringeAMl: value },
    });
    step(set(syringeAMl), set(jar.syringeAMl), [{ kind: "jar", id }]);
    tables.jar[id] = { ...jar, syringeAMl };
  }
  if (steps.length !== size.changes)
    throw new Error(`the study needs ${steps.length} changes for its records`);
  const file = openStudyFile(path, now);
  if (!file.ok) throw new Error(file.message);
  const written = file.value.appendAll(steps, tables);
  file.value.close();
  if (!written.ok) throw new Error(written.message);
}

/** What a study of 20,000 jars and 100,000 changes is made of. */
export const largest: LargeStudy = { series: 400, jarsPerSeries: 50, changes: 100_000 };
