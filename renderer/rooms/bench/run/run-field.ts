import { bad, good, type Outcome } from "../../../../src/outcome.ts";
import type { RunStep } from "../../../../src/bench/run-steps.ts";
import {
  parseReadingText,
  readingColumn,
  readingCommands,
} from "../../../../src/study/bench-table/reading-columns.ts";
import type { JarColumn, TableContext } from "../../../../src/study/bench-table/jar-columns.ts";
import { readingOf } from "../../../../src/study/bench-table/jar-columns.ts";
import type { SimpleCommand } from "../../../../src/study/commands.ts";
import type { JarChain } from "../../../../src/study/derive/jars.ts";
import { fieldText } from "../../../../src/study/bench-table/reading-columns.ts";
import { parseNumber, writeNumber } from "../../../../src/units/number-entry.ts";
import { benchRunWords } from "../../../../src/words/bench-run.ts";
import type { Lap } from "../../../stores/run.ts";
import { hasReading } from "./run-jars.ts";

const words = benchRunWords.field;

/** The one number a step asks for. */
export interface RunFieldSpec {
  /** changes with every new number, so that each starts clean */
  key: string;
  label: string;
  unit: string;
  place: string;
  stored: string;
  standard: string;
  /** what the change is called in the history */
  title: string;
  /** whether ">x" makes sense */
  censorable: boolean;
  commands(text: string): Outcome<SimpleCommand[]>;
}

function readingField(
  context: TableContext,
  jar: JarChain,
  kind: Parameters<typeof readingColumn>[0],
  field: string,
  again: boolean,
): RunFieldSpec | null {
  const column = readingColumn(kind, field);
  if (!column) return null;
  const { series } = context;
  const before = again ? null : readingOf(jar, column);
  const reads = jar.readings.filter(({ result }) => result.kind === kind).length;
  return {
    key: `${jar.jar.id} ${column.key} ${again ? `again ${reads}` : ""}`,
    label: again ? words.again(column.label, reads + 1) : column.label,
    unit: column.unit(series),
    place: `jar ${jar.jar.id} ${column.key}${again ? " again" : ""}`,
    stored: before ? fieldText(before.result, field, context.mark) : "",
    standard: column.standard,
    title: words.ofJar(column.label, jar.jar.label),
    censorable: column.censorable,
    commands: (text) => {
      const parsed = parseReadingText(column, text, series, context.mark);
      if (!parsed.ok) return parsed;
      return readingCommands(column, parsed.value, {
        jarId: jar.jar.id,
        before,
        series,
        newId: context.newId,
        now: context.now(),
      });
    },
  };
}

/** A marked lap that waits for its volume. */
function lapField(context: TableContext, jar: JarChain, lap: Lap): RunFieldSpec {
  return {
    key: `${jar.jar.id} lap ${lap.atS}`,
    label: words.drainedAt(writeNumber(lap.atS, context.mark)),
    unit: "mL",
    place: `jar ${jar.jar.id} lap ${lap.atS}`,
    stored: "",
    standard: "EN 14701-4:2018",
    title: words.drainedOf(jar.jar.label),
    censorable: false,
    commands: (text) => {
      if (text.trim() === "") return good([]);
      const parsed = parseNumber(text, context.mark);
      return parsed.ok ? good([drainedAt(context, jar, parsed.value, lap.atS)]) : parsed;
    },
  };
}

/** The edit that keeps a drained volume at a time. */
export function drainedAt(context: TableContext, jar: JarChain, ml: number, atS: number): SimpleCommand {
  return {
    do: "add",
    kind: "reading",
    record: {
      id: context.newId(),
      jarId: jar.jar.id,
      takenAt: context.now(),
      result: { kind: "drained", ml, atS },
    },
  };
}

/** What the current step asks for, or null where it asks for no number. */
export function fieldFor(
  step: RunStep,
  context: TableContext,
  columns: JarColumn[],
  jar: JarChain,
  state: { again: boolean; laps: Lap[]; running: boolean },
): RunFieldSpec | null {
  switch (step.kind) {
    case "inject": {
      const column = columns.find(({ key }) => key === `syringe${step.letter}`);
      if (!column) return null;
      return {
        key: `${jar.jar.id} ${column.key}`,
        label: words.injected(step.letter),
        unit: "mL",
        place: column.place(jar),
        stored: column.text(jar),
        standard: "",
        title: words.syringeOf(jar.jar.label),
        censorable: false,
        commands: (text) => (text.trim() === "" ? bad(words.enterInjected) : column.commands(jar, text)),
      };
    }
    case "pour":
      return {
        key: `${jar.jar.id} pours`,
        label: words.pours,
        unit: "",
        place: `jar ${jar.jar.id} pours`,
        stored: String(jar.jar.asMixed?.pours ?? step.pours),
        standard: "",
        title: words.poursOf(jar.jar.label),
        censorable: false,
        commands: (text) => {
          const parsed = parseNumber(text, context.mark);
          if (!parsed.ok) return parsed;
          return good([poursOf(jar, parsed.value)]);
        },
      };
    case "drain": {
      if (!state.running && !hasReading(jar, "drained", "ml")) return null;
      const waiting = state.laps.find(({ ml }) => ml === null);
      if (hasReading(jar, "drained", "ml") && waiting) return lapField(context, jar, waiting);
      return readingField(context, jar, "drained", "ml", false);
    }
    case "read":
      return readingField(context, jar, step.reading, step.field, state.again);
    default:
      return null;
  }
}

const unmixed = { fastRpm: null, fastS: null, betweenS: null, slowRpm: null, slowS: null, pours: null };

/** The edit that keeps how many pours a jar had. */
export function poursOf(jar: JarChain, pours: number): SimpleCommand {
  return {
    do: "set",
    kind: "jar",
    id: jar.jar.id,
    fields: { asMixed: { ...unmixed, ...jar.jar.asMixed, pours } },
  };
}

/** The edit that keeps how long, and how fast, a jar was mixed. */
export function mixedFor(
  jar: JarChain,
  pace: "fast" | "between" | "slow",
  rpm: number | null,
  seconds: number,
): SimpleCommand {
  return {
    do: "set",
    kind: "jar",
    id: jar.jar.id,
    fields: {
      asMixed: {
        ...unmixed,
        ...jar.jar.asMixed,
        [`${pace}S`]: seconds,
        ...(pace === "between" ? { fastRpm: rpm } : { [`${pace}Rpm`]: rpm }),
      },
    },
  };
}
