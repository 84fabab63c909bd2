import type { FilterTimeWords } from "../filter-time.ts";

export const responseFilterTime: FilterTimeWords = {
  label: "Filtrierzeit",
  column: "Filtrierzeit",
  ask: "Zeit stoppen, bis die halbe Probe als Filtrat durch ist",
  standard: "Standard Methods 2710 H (Bedingungen aus dem Gedächtnis)",
  head: "Filtrierzeit, s",
  onScreen: (seconds) => `Filtrierzeit ${seconds} s`,
  time: "Zeit",
};
