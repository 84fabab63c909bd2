/** A filtration test whose seconds over volume are a straight line: 0.02 s/mL² and 0.2 s/mL. */
export const filtrationTest = (firstUsed: number) => ({
  kind: "srf",
  points: [20, 40, 60, 80].map((volumeMl) => ({ volumeMl, seconds: volumeMl * (0.02 * volumeMl + 0.2) })),
  firstUsed,
  lastUsed: 4,
  diameterMm: 70,
  pressureKPa: 50,
  temperatureC: 20,
  cakeKgPerM3: 25,
});
