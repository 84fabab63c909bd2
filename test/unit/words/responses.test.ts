import { afterEach, describe, expect, it } from "vitest";
import { fieldLabel } from "../../../src/exchange/column-words.ts";
import { fields } from "../../../src/exchange/columns.ts";
import { methods, sourceOf } from "../../../src/methods/methods.ts";
import { flocWords } from "../../../src/responses/floc-grade.ts";
import {
  fileSlots,
  kindsAsTaken,
  readingColumns,
  responseSpecs,
  responseWords,
  valueOf,
} from "../../../src/responses/registry.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import { jarMeasurements, pressPressure } from "../../../src/study/derive/measurements.ts";
import { mixingChain } from "../../../src/study/derive/plant-mixing.ts";
import type { RecordOf } from "../../../src/study/schema/records.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";
import { planned } from "../exchange/bench-study.ts";
import { apply, demoState } from "../study/state.ts";

const at = "2026-03-01T12:00:00.000Z";
const demo = demoState(at);
const series = Object.values(demo.series)[0]!;

afterEach(() => speak("english", null));

/** Texts by a name for each, so that the same one can be looked up in both languages. */
type Told = Record<string, string>;

/** What changed by a change of language, and what did not. */
function unchanged(tell: () => Told): string[] {
  speak("english", null);
  const english = tell();
  speak("german", german);
  const other = tell();
  expect(Object.keys(other)).toEqual(Object.keys(english));
  return Object.entries(english).flatMap(([name, text]) =>
    other[name] === text ? [`${name}: ${text}`] : [],
  );
}

const results: RecordOf<"reading">["result"][] = [
  { kind: "turbidity", value: 120, censored: null, dilution: 10 },
  { kind: "filtrate-tss-dish", tareG: 1.2, dryG: null, volumeMl: null },
  { kind: "cake-dish", tareG: 30, wetG: null, dryG: null },
  { kind: "drained", ml: 196, atS: 60 },
  { kind: "filter-time", seconds: 40 },
  { kind: "floc-grade", grade: 4 },
  { kind: "re-shear", firstMm: 5, brokenMm: 2, regrownMm: 4 },
  { kind: "zeta", mV: -12 },
  { kind: "capture", pct: 97 },
  {
    kind: "srf",
    points: [20, 40, 60].map((volumeMl, i) => ({ volumeMl, seconds: 30 * (i + 1) ** 2 })),
    firstUsed: 1,
    lastUsed: 3,
    diameterMm: 70,
    pressureKPa: 50,
    temperatureC: 20,
    cakeKgPerM3: 30,
  },
];

describe("what is read of a jar", () => {
  it("is named and asked for in the language spoken, wherever its words are read from", () => {
    const frozen = unchanged(() => {
      const told: Told = {};
      for (const [name, { label }] of Object.entries(responseWords)) told[`response ${name}`] = label;
      for (const { name, label } of responseSpecs) told[`spec ${name}`] = label;
      for (const { key, label, ask } of readingColumns)
        Object.assign(told, { [key]: label, [`${key}?`]: ask });
      for (const { kind, spec } of kindsAsTaken) {
        told[`${kind} head`] = spec.head(series);
        if (spec.run) told[`${kind} run`] = spec.run.label;
        if (!spec.form) continue;
        told[`${kind} form`] = spec.form.title;
        for (const [field, label] of spec.form.fields) told[`${kind} ${field}`] = label;
      }
      for (const { slot, words } of fileSlots) told[`slot ${slot}`] = words;
      for (const field of fields) told[`field ${field}`] = fieldLabel(field);
      for (const [grade, look] of Object.entries(flocWords)) told[`grade ${grade}`] = look;
      return told;
    });
    expect(frozen).toEqual([
      "response cst_s: CST",
      "spec cst_s: CST",
      "cst: CST",
      "cst head: CST, s",
      "cst run: CST",
    ]);
  });

  it("is told on the screen in the language spoken, with the same numbers", () => {
    const numbers = { entry: String, plain: (value: number) => String(Number(value.toPrecision(3))) };
    const tell = () =>
      Object.fromEntries(
        results.map((result) => {
          const { spec } = kindsAsTaken.find(({ kind }) => kind === result.kind)!;
          return [result.kind, spec.onScreen(result, numbers, valueOf(result), series)];
        }),
      );
    expect(unchanged(tell)).toEqual([]);
    const digits = (told: Told) => Object.values(told).map((text) => text.match(/[\d.]+/g));
    const after = digits(tell());
    speak("english", null);
    expect(after).toEqual(digits(tell()));
  });

  it("is refused from a file in the language spoken", () => {
    speak("german", german);
    const plan = planned("jar;syringe_a_ml;cake_dish_tare_g;cake_dish_wet_g\n1;12.5;;40\n");
    expect(plan.ok && plan.value.errors.map(({ message }) => message)).toEqual([
      expect.stringContaining("ist leer, wird aber gebraucht für: eine Kuchenschale."),
    ]);
  });
});

describe("methods", () => {
  it("say what, how and whence in the language spoken", () => {
    expect(methods.length).toBeGreaterThan(40);
    expect(
      unchanged(() =>
        Object.fromEntries(
          methods.flatMap(({ id, what, formula, source }) => [
            [`${id} what`, what],
            [`${id} formula`, formula],
            [`${id} source`, source],
          ]),
        ),
      ),
    ).toEqual([]);
    expect(sourceOf("rates")).toMatch(/^Massenbilanz/);
  });
});

describe("measurements and mixing", () => {
  it("are made in the language spoken", () => {
    const jarId = Object.values(demo.jar).find(({ seriesId }) => seriesId === series.id)!.id;
    let state = apply(demo, {
      do: "set",
      kind: "series",
      id: series.id,
      fields: {
        protocol: {
          ...series.protocol,
          pours: 5,
          pourHeightM: 0.1,
          poursS: 10,
          pressForceN: 300,
          pistonDiameterMm: 50,
        },
      },
    });
    for (const [index, result] of results.entries())
      state = apply(state, { do: "add", kind: "reading", record: { id: `more-${index}`, jarId, result } });
    const tell = (): Told => {
      const chain = seriesChain(state, series.id);
      const jar = chain.jars.find((one) => one.jar.id === jarId)!;
      return Object.fromEntries(
        jarMeasurements(state, chain, jar).flatMap(({ name, standard, figure }, i) => [
          [`${i} name`, name],
          [`${i} standard`, standard],
          ...figure.made.inputs.map((input, k) => [`${i} input ${k}`, input.name]),
        ]) as [string, string][],
      );
    };
    const names = Object.keys(tell()).filter((name) => name.endsWith("name"));
    expect(names.length).toBeGreaterThan(10);
    expect(unchanged(tell)).toEqual([]);
    expect(pressPressure(state.series[series.id]!)!.made.formula).toBe("Kraft / Kolbenfläche");
    const mixing = Object.values(demo.mixing)[0]!;
    const conditions = {
      benchTemperatureC: 18,
      plantTemperatureC: 15,
      densityKgPerL: 1,
      feedM3PerH: 20,
      solutionLPerH: 900,
    };
    const mixed = (): Told => {
      const { verdict, ...figures } = mixingChain(mixing, series, conditions);
      return {
        verdict: verdict.words,
        ...Object.fromEntries(
          Object.entries(figures).flatMap(([name, { made }]) => [
            [`${name} source`, made.source],
            ...made.inputs.map((input, k) => [`${name} input ${k}`, input.name]),
          ]) as [string, string][],
        ),
      };
    };
    expect(unchanged(mixed)).toEqual([]);
    expect(mixingChain(mixing, series, { ...conditions, densityKgPerL: null }).verdict.words).toBe(
      "Um das Mischen zu vergleichen: Dichte des Schlamms eintragen.",
    );
  });
});
