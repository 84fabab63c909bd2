import { area } from "./language.ts";

/** What is wrong with a typed number, and the units that hold words. */
export const numberEntryWords = area("numberEntry", {
  empty: "Nothing is entered here.",
  gap: (shown: string) =>
    `"${shown}" has a gap between its digits: enter the number without thousands marks.`,
  marks: (shown: string) => `"${shown}" has more than one mark: enter the number without thousands marks.`,
  more: (shown: string) =>
    `"${shown}" is more than a number: enter the number alone, its unit stands beside the cell.`,
  notNumber: (shown: string) => `"${shown}" is not a number: enter digits only.`,
  twoWays: (shown: string) =>
    `"${shown}" could be read two ways: say first whether the decimal mark is a point or a comma.`,
  otherMark: (shown: string, mark: "," | ".") =>
    mark === ","
      ? `"${shown}" uses a point, but the decimal mark here is a comma: enter it with that.`
      : `"${shown}" uses a comma, but the decimal mark here is a point: enter it with that.`,
  tooLarge: (shown: string) => `"${shown}" is too large a number.`,
  units: {
    asSuppliedKgPerT: "kg/t as supplied",
    asSuppliedLbPerShortTon: "lb/short ton as supplied",
    kgPerYear: "kg/y",
    lbPerYear: "lb/y",
    litrePerYear: "L/y",
    galPerYear: "gal/y",
    perTDrySolids: "per t dry solids",
    perYear: "per year",
  },
});
