// How often `analyse` gives a wrong confident number or a wrong refusal, by simulation on truths of each kind.
// usage: node test/bench/verdicts.ts [runs]
import { analyseJars } from "../../src/curve/analyse.ts";
import { responseSpecs } from "../../src/responses/registry.ts";
import { normalFrom, seededRandom } from "../../src/curve/random.ts";

const runs = Number(process.argv[2] ?? 100);

interface Truth {
  name: string;
  response: "turbidity_ntu" | "cake_ts_pct";
  value(dose: number): number;
  /** the true best dose (or knee), or null where there is none to find */
  best: number | null;
}

const truths: Truth[] = [
  {
    name: "even valley",
    response: "turbidity_ntu",
    value: (d) => Math.exp(3.8 + 0.18 * (d - 5.5) ** 2),
    best: 5.5,
  },
  {
    name: "valley in ln dose",
    response: "turbidity_ntu",
    value: (d) => Math.exp(3.8 + 3 * Math.log(d / 4.5) ** 2),
    best: 4.5,
  },
  {
    name: "steep fall, slow rise",
    response: "turbidity_ntu",
    value: (d) => Math.exp(3.6 + 9 * Math.exp(-1.1 * (d - 1)) + 0.12 * (d - 5)),
    best: 1 + Math.log((9 * 1.1) / 0.12) / 1.1,
  },
  {
    name: "valley with shoulders",
    response: "turbidity_ntu",
    value: (d) => Math.exp(6.6 - 2.8 * Math.exp(-((d - 5.4) ** 2) / (2 * 1.7 ** 2))),
    best: 5.4,
  },
  { name: "still falling", response: "turbidity_ntu", value: (d) => Math.exp(6.5 - 0.35 * d), best: null },
  { name: "noise only", response: "turbidity_ntu", value: () => 200, best: null },
  {
    name: "valley beyond the doses",
    response: "turbidity_ntu",
    value: (d) => Math.exp(3.8 + 0.05 * (d - 12) ** 2),
    best: null,
  },
  {
    name: "saturating cake",
    response: "cake_ts_pct",
    value: (d) => 21 - 12 * Math.exp(-0.7 * d),
    best: Math.log(20) / 0.7,
  },
  { name: "cake rising in a line", response: "cake_ts_pct", value: (d) => 12 + 0.8 * d, best: null },
  { name: "cake, noise only", response: "cake_ts_pct", value: () => 18, best: null },
];

const designs: { name: string; doses: number[] }[] = [
  { name: "6 single", doses: [2, 3, 4, 5, 6, 8] },
  { name: "8 single", doses: [2, 3, 4, 5, 6, 7, 8, 10] },
  { name: "6 x 2", doses: [2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 8, 8] },
  { name: "7 x 2", doses: [2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 8, 8, 10, 10] },
];

console.log("truth | design | found, covered | found, wrong | refused | reasons");
for (const truth of truths)
  for (const design of designs) {
    let covered = 0;
    let wrong = 0;
    let refused = 0;
    const reasons = new Map<string, number>();
    for (let run = 0; run < runs; run++) {
      const normal = normalFrom(seededRandom(1000 + run));
      const rows = design.doses.map((dose, i) => ({
        row: i + 1,
        jar: String(i + 1),
        doseA: dose,
        doseB: 0,
        block: null,
        order: null,
        readings: {
          [truth.response]: {
            value:
              truth.response === "cake_ts_pct"
                ? truth.value(dose) + 0.35 * normal()
                : truth.value(dose) * Math.exp(0.09 * normal()),
            censored: null,
          },
        },
      }));
      const result = analyseJars(rows, {
        name: "",
        responses: responseSpecs,
        number: (value) => value.toPrecision(3),
        jar: String,
      });
      if (!result.ok) throw new Error(result.message);
      const { verdict, suggested } = result.value.analysis.responses[0]!;
      if (verdict.kind === "none") {
        refused += 1;
        reasons.set(String(verdict.reason), (reasons.get(String(verdict.reason)) ?? 0) + 1);
        continue;
      }
      reasons.set(String(suggested), (reasons.get(String(suggested)) ?? 0) + 1);
      const low = (verdict.low ?? -Infinity) as number;
      const high = (verdict.high ?? Infinity) as number;
      const slack = verdict.kind === "knee" ? 0.5 : 0.1;
      if (truth.best !== null && truth.best >= low - slack && truth.best <= high + slack) covered += 1;
      else wrong += 1;
    }
    const words = [...reasons].sort((a, b) => b[1] - a[1]).map(([reason, count]) => `${reason} ${count}`);
    console.log(`${truth.name} | ${design.name} | ${covered} | ${wrong} | ${refused} | ${words.join(", ")}`);
  }
