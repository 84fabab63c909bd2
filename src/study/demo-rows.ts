// Invented readings: drawn once from a made-up sludge with seeded scatter, then written down as a technician would have.

/** Order run, planned kg/t, NTU (">" over range), filtrate TSS mg/L, cake % TS, drained mL at 10 s, CST s, floc grade. */
export type OneRow = [number, number, string, number, number, number, number, number];

export const oneRows: OneRow[] = [
  [3, 0, ">1000", 1480, 9.8, 18, 148.0, 1],
  [7, 2, "447", 663, 14.94, 69, 58.2, 2],
  [12, 2, "534", 692, 15.11, 74, 61.8, 2],
  [1, 3, "146", 235, 16.88, 149, 29.7, 3],
  [9, 3, "129", 206, 16.86, 142, 28.3, 3],
  [5, 4, "62.5", 118, 18.83, 199, 17.5, 4],
  [13, 4, "53.5", 113, 19.13, 204, 18.3, 4],
  [2, 5, "46", 82, 19.41, 229, 14.0, 5],
  [10, 5, "42.9", 83, 19.26, 227, 14.5, 5],
  [4, 6, "50.1", 99, 20.11, 234, 13.9, 5],
  [11, 6, "51.8", 84, 19.92, 240, 13.3, 4],
  [6, 8, "134", 204, 19.93, 250, 20.2, 3],
  [8, 8, "128", 227, 20.39, 247, 18.3, 3],
];

/** Order run, planned A kg/t, planned B kg/t, NTU, cake % TS: a three-by-three factorial with extra centres. */
export const twoRows: [number, number, number, number, number][] = [
  [4, 3, 2, 242.1, 18.43],
  [8, 6, 2, 102.9, 19.3],
  [1, 9, 2, 92.1, 19.44],
  [10, 3, 3, 95.9, 19.19],
  [6, 6, 3, 42.7, 20.65],
  [2, 9, 3, 60.1, 20.72],
  [11, 3, 4, 75.8, 19.25],
  [3, 6, 4, 60.3, 20.6],
  [7, 9, 4, 71.6, 20.95],
  [5, 6, 3, 52.4, 20.31],
  [9, 6, 3, 48.9, 20.92],
];

/** Tare, wet, dry, ash in g of the sample's three dishes. */
export const dishRows: [number, number, number, number][] = [
  [46.8812, 73.1094, 47.5336, 47.0471],
  [49.2075, 74.9421, 49.8449, 49.3708],
  [47.5531, 72.4408, 48.1716, 47.7119],
];

/** Setting %, mL caught, seconds: three settings repeated, two once. */
export const neatDraws: [number, number, number][] = [
  [20, 14.2, 60],
  [20, 14.0, 60],
  [40, 31.4, 60],
  [60, 49.2, 60],
  [60, 48.9, 60],
  [80, 66.7, 60],
  [100, 84.0, 60],
  [100, 84.5, 60],
];
