import type { SrfWords } from "../srf.ts";

export const responseSrf: SrfWords = {
  label: "Filtrationswiderstand",
  head: "Filtration, spezi\u00adfischer Wider\u00adstand in Tm/kg",
  onPaper: (volumes, firstUsed, lastUsed, kPa, celsius, made) =>
    `${volumes} Volumina, ${firstUsed} bis ${lastUsed} benutzt, ${kPa} kPa, ${celsius} °C${made === null ? ": kein gerader Teil" : ` = ${made}`}`,
  onScreen: (volumes, made) => `Filtration, ${volumes} Volumina${made === null ? "" : `: ${made} Tm/kg`}`,
  slot: "spezifischer Filtrationswiderstand",
  group: "ein spezifischer Filtrationswiderstand",
  needsPoints:
    "ein spezifischer Filtrationswiderstand wird mit seinen Volumina und Zeiten geführt (srf_volumes_ml, srf_times_s und die zugehörigen Spalten): diese hinzufügen oder diese Spalte weglassen.",
  unlikeLists: (times, volumes) => `hat ${times} Zeiten für ${volumes} Volumina.`,
  fields: {
    srf_tm_per_kg: "spezifischer Filtrationswiderstand, Tm/kg",
    srf_volumes_ml: "spezifischer Filtrationswiderstand: Volumina, mL",
    srf_times_s: "spezifischer Filtrationswiderstand: Zeiten, s",
    srf_first_used: "spezifischer Filtrationswiderstand: erster benutzter Punkt",
    srf_last_used: "spezifischer Filtrationswiderstand: letzter benutzter Punkt",
    srf_diameter_mm: "spezifischer Filtrationswiderstand: Filterdurchmesser, mm",
    srf_pressure_kpa: "spezifischer Filtrationswiderstand: Druck, kPa",
    srf_temperature_c: "spezifischer Filtrationswiderstand: Temperatur, °C",
    srf_cake_kg_per_m3: "spezifischer Filtrationswiderstand: trockener Kuchen je Filtrat, kg/m³",
  },
};
