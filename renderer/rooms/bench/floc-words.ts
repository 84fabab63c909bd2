/** Our own words for the floc grades. */
export const flocWords: Record<number, string> = {
  1: "no floc, cloudy",
  2: "pin floc, still cloudy",
  3: "small floc, hazy water",
  4: "clear water between firm floc",
  5: "large firm floc, clear at once",
};
