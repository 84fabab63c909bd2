import { area, counted } from "./language.ts";

/** The jar table of a series: its columns, and why a typed or pasted text does not stand. */
export const benchTableWords = area("benchTable", {
  name: "name",
  runningOrder: "running order",
  plannedDose: (letter: string) => `planned dose ${letter}`,
  syringe: (letter: string) => `syringe ${letter}`,
  blankWater: "blank water",
  roles: { "no-polymer": "no polymer", dose: "", standard: "standard", centre: "centre" },
  reads: (count: number) => counted(count, "read", "reads"),
  plainNumber: (column: string) => `${column} is read as a number, without > or <.`,
  notHere: (column: string) => `${column} is not entered here.`,
  needsOrder: "A jar needs its place in the running order.",
  needsName: "A jar needs a name.",
  chooseCell: "Choose a typed cell to paste into.",
  wideBlock: (wide: number, left: number) =>
    `The block is ${wide} columns wide, but only ${left} typed columns are left from here.`,
  blockRefused: (row: number, column: string, why: string) =>
    `Row ${row} of the block, ${column}: ${why} Nothing was pasted.`,
  pairsPlanned: "With two polymers the doses of new jars are planned as pairs.",
  stockFirst: "The strength and density of the stock solution come first.",
  solidsFirst: "The sample's total solids come first.",
  volumeFirst: "Enter the sample volume of each jar first.",
  filtration: {
    pair: (line: number) => `Line ${line}: enter a volume and a time, with a blank between.`,
    volume: (line: number, why: string) => `Line ${line}, volume: ${why}`,
    time: (line: number, why: string) => `Line ${line}, time: ${why}`,
    aboveZero: (line: number) => `Line ${line}: volume and time must be above 0.`,
    rising: (line: number) => `Line ${line}: both volume and time must rise from line to line.`,
    few: "Enter at least three volumes with their times.",
  },
});
