import { z } from "zod";
import { bad, good, type Outcome } from "../outcome.ts";
import { fitPumpLine, settingFor, type PumpSetting } from "./pump-line.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

// Wide enough for any plant, narrow enough that no product of such numbers leaves what a double holds.
const amount = z.number().min(0).max(1e12);
const positive = z.number().gt(0).min(1e-12).max(1e12);
const share = positive.max(100);

const drawSchema = z.union([
  z.strictObject({ settingPct: amount, mlPerMin: positive }),
  z.strictObject({ settingPct: amount, gPerMin: positive }),
]);

/** What `rates` is asked: the feed, one or two polymers in order of injection, and what the machine makes of it. */
export const ratesInputSchema = z.strictObject({
  feed: z.strictObject({
    flowM3PerH: positive,
    totalSolidsPct: share,
    densityKgPerL: positive.max(3),
    hoursPerDay: positive.max(24),
    daysPerYear: positive.max(366),
  }),
  polymers: z
    .array(
      z.strictObject({
        form: z.enum(["dry", "emulsion", "dispersion", "solution", "mannich", "metal-salt"]).optional(),
        doseKgPerT: amount,
        activePct: share,
        densityKgPerL: positive.max(5).optional(),
        solutionActivePct: share,
        solutionDensityKgPerL: positive.max(3),
        carrierActivePct: share.optional(),
        pricePerKgNeat: amount.optional(),
        batchL: positive.optional(),
        ageingMin: amount.optional(),
        pump: z
          .strictObject({ stream: z.enum(["neat", "solution"]), draws: z.array(drawSchema).min(1) })
          .optional(),
      }),
    )
    .min(1)
    .max(2),
  capturePct: share.optional(),
  cakeTsPct: share.optional(),
  disposalPerWetT: amount.optional(),
  returnPerT: amount.optional(),
});

export type RatesInput = z.infer<typeof ratesInputSchema>;
type PolymerInput = RatesInput["polymers"][number];

export interface PolymerRates {
  activeKgPerH: number;
  neatKgPerH: number;
  /** null for a dry product, or where its density is not known */
  neatLPerH: number | null;
  neatMlPerMin: number | null;
  neatGPerMin: number;
  solutionLPerH: number;
  makeUpWaterKgPerH: number;
  carrierLPerH?: number;
  batchHours?: number;
  ageingVolumeL?: number;
  neatKgPerYear: number;
  neatLPerYear: number | null;
  costPerTDs?: number;
  costPerYear?: number;
  setting?: PumpSetting;
}

export interface Rates {
  dsKgPerH: number;
  wetCakeKgPerH?: number;
  returnKgPerH?: number;
  disposalPerTDs?: number;
  disposalPerYear?: number;
  returnPerTDs?: number;
  polymers: PolymerRates[];
}

/** Dry-solids load of a feed in kg/h: 1000 Q rho TS. */
export function drySolidsKgPerH(flowM3PerH: number, densityKgPerL: number, totalSolidsPct: number): number {
  return flowM3PerH * 1000 * densityKgPerL * (totalSolidsPct / 100);
}

/**
 * Full-scale rates: load, neat and solution rates, water, use and cost. Carrier and make-up water at 1.000 kg/L, the
 * wet cake without retained polymer, the ageing volume without dead volume. Source: trade formulas, section 7.
 */
export function plantRates(input: RatesInput): Outcome<Rates> {
  const { feed } = input;
  const dsKgPerH = drySolidsKgPerH(feed.flowM3PerH, feed.densityKgPerL, feed.totalSolidsPct);
  const hoursPerYear = feed.hoursPerDay * feed.daysPerYear;
  const dsTPerYear = (dsKgPerH * hoursPerYear) / 1000;
  const polymers: PolymerRates[] = [];
  for (const [index, polymer] of input.polymers.entries()) {
    const rates = polymerRates(polymer, dsKgPerH, hoursPerYear, dsTPerYear, `polymers[${index}]`);
    if (!rates.ok) return rates;
    polymers.push(rates.value);
  }
  const out: Rates = { dsKgPerH, polymers };
  if (input.capturePct !== undefined && input.cakeTsPct !== undefined) {
    const kept = input.capturePct / 100;
    out.wetCakeKgPerH = (dsKgPerH * kept) / (input.cakeTsPct / 100);
    if (input.disposalPerWetT !== undefined) {
      out.disposalPerTDs = (kept / (input.cakeTsPct / 100)) * input.disposalPerWetT;
      out.disposalPerYear = out.disposalPerTDs * dsTPerYear;
    }
  }
  if (input.capturePct !== undefined) {
    out.returnKgPerH = dsKgPerH * (1 - input.capturePct / 100);
    if (input.returnPerT !== undefined) out.returnPerTDs = (1 - input.capturePct / 100) * input.returnPerT;
  }
  return good(out);
}

function polymerRates(
  polymer: PolymerInput,
  dsKgPerH: number,
  hoursPerYear: number,
  dsTPerYear: number,
  path: string,
): Outcome<PolymerRates> {
  const dry = polymer.form === "dry";
  if (!dry && polymer.densityKgPerL === undefined) return bad(plantFormulaWords.rates.densityMissing(path));
  if (polymer.solutionActivePct > polymer.activePct)
    return bad(plantFormulaWords.rates.solutionAbove(path, polymer.solutionActivePct, polymer.activePct));
  if (polymer.carrierActivePct !== undefined && polymer.carrierActivePct > polymer.solutionActivePct)
    return bad(
      plantFormulaWords.rates.carrierAbove(path, polymer.carrierActivePct, polymer.solutionActivePct),
    );
  const density = dry ? null : (polymer.densityKgPerL ?? null);
  const activeKgPerH = (dsKgPerH * polymer.doseKgPerT) / 1000;
  const neatKgPerH = activeKgPerH / (polymer.activePct / 100);
  const solutionKgPerH = activeKgPerH / (polymer.solutionActivePct / 100);
  const neatLPerH = density === null ? null : neatKgPerH / density;
  const solutionLPerH = solutionKgPerH / polymer.solutionDensityKgPerL;
  const neatKgPerYear = neatKgPerH * hoursPerYear;
  const out: PolymerRates = {
    activeKgPerH,
    neatKgPerH,
    neatLPerH,
    neatMlPerMin: neatLPerH === null ? null : (neatLPerH * 1000) / 60,
    neatGPerMin: (neatKgPerH * 1000) / 60,
    solutionLPerH,
    makeUpWaterKgPerH: solutionKgPerH - neatKgPerH,
    neatKgPerYear,
    neatLPerYear: density === null ? null : neatKgPerYear / density,
  };
  if (polymer.carrierActivePct !== undefined)
    out.carrierLPerH = activeKgPerH / (polymer.carrierActivePct / 100) - solutionKgPerH;
  if (polymer.batchL !== undefined && solutionLPerH > 0) out.batchHours = polymer.batchL / solutionLPerH;
  if (polymer.ageingMin !== undefined) out.ageingVolumeL = (solutionLPerH * polymer.ageingMin) / 60;
  if (polymer.pricePerKgNeat !== undefined) {
    out.costPerTDs = (polymer.doseKgPerT / (polymer.activePct / 100)) * polymer.pricePerKgNeat;
    out.costPerYear = out.costPerTDs * dsTPerYear;
  }
  if (polymer.pump) {
    const setting = settingOf(polymer, polymer.pump, out, dry, `${path}.pump`);
    if (!setting.ok) return setting;
    out.setting = setting.value;
  }
  return good(out);
}

function settingOf(
  polymer: PolymerInput,
  pump: NonNullable<PolymerInput["pump"]>,
  rates: PolymerRates,
  dry: boolean,
  path: string,
): Outcome<PumpSetting> {
  const byMass = pump.draws.filter((draw) => "gPerMin" in draw).length;
  if (byMass !== 0 && byMass !== pump.draws.length) return bad(plantFormulaWords.rates.mixedDraws(path));
  const weighed = byMass > 0;
  if (dry && pump.stream === "neat" && !weighed) return bad(plantFormulaWords.rates.dryByMass(path));
  const density = pump.stream === "neat" ? (polymer.densityKgPerL ?? null) : polymer.solutionDensityKgPerL;
  const targetMl = pump.stream === "neat" ? rates.neatMlPerMin : (rates.solutionLPerH * 1000) / 60;
  const target = weighed ? (pump.stream === "neat" ? rates.neatGPerMin : targetMl! * density!) : targetMl;
  if (target === null) return bad(plantFormulaWords.rates.flowUnknown(path));
  const line = fitPumpLine(
    pump.draws.map((draw) => ({
      setting: draw.settingPct,
      flow: "gPerMin" in draw ? draw.gPerMin : draw.mlPerMin,
    })),
  );
  if (!line.ok) return bad(`${path}.draws: ${line.message}`);
  return good(settingFor(line.value, target));
}
