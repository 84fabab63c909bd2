/** Densities in kg/L that the estimate rests on: volatile and fixed solids, and water (from memory). */
const volatileKgPerL = 1.0;
const fixedKgPerL = 2.5;
const waterKgPerL = 0.9982;

/** Density of the dry solids from their volatile share in percent. Source: textbook approach, from memory. */
export function dryMatterDensityKgPerL(volatilePct: number): number {
  const volatile = volatilePct / 100;
  return 1 / (volatile / volatileKgPerL + (1 - volatile) / fixedKgPerL);
}

/** Density of sludge (or voidless cake) from its total solids and their volatile share, both percent, in kg/L. */
export function sludgeDensityKgPerL(
  totalSolidsPct: number,
  volatilePct: number,
  water = waterKgPerL,
): number {
  const solids = totalSolidsPct / 100;
  return 1 / (solids / dryMatterDensityKgPerL(volatilePct) + (1 - solids) / water);
}

/** Total solids in g/L of sludge from percent by mass and density. */
export function totalSolidsGPerL(totalSolidsPct: number, densityKgPerL: number): number {
  return 10 * totalSolidsPct * densityKgPerL;
}
