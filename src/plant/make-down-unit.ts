/** Ageing volume in L: what is drawn during the ageing time, and so much more as the tank cannot empty (percent). */
export function ageingTankL(solutionLPerH: number, ageingMin: number, deadVolumePct: number): number {
  return ((solutionLPerH * ageingMin) / 60) * (1 + deadVolumePct / 100);
}

export interface BatchTimes {
  fillMin: number;
  wetMin: number;
  ageMin: number;
  transferMin: number;
}

export interface BatchTiming {
  /** minutes that one batch feeds the pump */
  lastsMin: number;
  /** minutes from starting a batch to having it handed over */
  readyMin: number;
  keepsUp: boolean;
  /** the batch that would just keep up, L */
  leastBatchL: number;
}

/** Does a batch last as long as the next one takes: fill, wet, age and transfer against batch over draw. */
export function batchTiming(batchL: number, solutionLPerH: number, times: BatchTimes): BatchTiming {
  const readyMin = times.fillMin + times.wetMin + times.ageMin + times.transferMin;
  const lastsMin = (batchL * 60) / solutionLPerH;
  return {
    lastsMin,
    readyMin,
    keepsUp: lastsMin >= readyMin,
    leastBatchL: (solutionLPerH * readyMin) / 60,
  };
}

export interface ProductUse {
  kgPerDay: number;
  kgPerMonth: number;
  kgPerYear: number;
}

/** Use of neat product; a month is a twelfth of the year's running days. */
export function productUse(kgPerH: number, hoursPerDay: number, daysPerYear: number): ProductUse {
  const kgPerDay = kgPerH * hoursPerDay;
  const kgPerYear = kgPerDay * daysPerYear;
  return { kgPerDay, kgPerMonth: kgPerYear / 12, kgPerYear };
}

/** Running days that a stock of neat product lasts, and containers a year. */
export function stockDays(
  use: ProductUse,
  containerKg: number,
  containersInStock: number,
): { daysPerContainer: number; days: number; containersPerYear: number } {
  return {
    daysPerContainer: containerKg / use.kgPerDay,
    days: (containerKg * containersInStock) / use.kgPerDay,
    containersPerYear: use.kgPerYear / containerKg,
  };
}

/** Wet cake in kg/h with the active polymer that stays in it counted as solids. */
export function wetCakeWithPolymer(
  dsKgPerH: number,
  capturePct: number,
  cakeTsPct: number,
  doseKgPerT: number,
  retainedShare: number,
): number {
  return (dsKgPerH * (capturePct / 100) * (1 + (doseKgPerT / 1000) * retainedShare)) / (cakeTsPct / 100);
}

/**
 * Solids that return with the filtrate: concentration in mg/L in its flow of m³/h = feed + solution + carrier + wash -
 * cake, the cake at 1.000 kg/L. null where no liquid would be left.
 */
export function returnLoad(input: {
  returnKgPerH: number;
  feedM3PerH: number;
  solutionLPerH: number;
  carrierLPerH: number;
  washM3PerH: number;
  wetCakeKgPerH: number;
}): { filtrateM3PerH: number; mgPerL: number } | null {
  const filtrateM3PerH =
    input.feedM3PerH +
    (input.solutionLPerH + input.carrierLPerH) / 1000 +
    input.washM3PerH -
    input.wetCakeKgPerH / 1000;
  if (!(filtrateM3PerH > 0)) return null;
  return { filtrateM3PerH, mgPerL: (input.returnKgPerH * 1000) / filtrateM3PerH };
}

/**
 * Highest dose in kg active/t that keeps an amount of polymer per hectare: limit over the dry solids spread on it in
 * the same span of years. Local rules govern; this only does the division.
 */
export function landDoseLimitKgPerT(limitKgPerHa: number, drySolidsTPerHa: number): number {
  return limitKgPerHa / drySolidsTPerHa;
}
