import type { pumpChainWords } from "../pump-chain.ts";

export const pumpChain: typeof pumpChainWords = {
  lot: "Charge",
  lotWhy: "eine andere Charge kann dicker oder dünner sein, und der Schlupf der Pumpe ändert sich",
  activeShare: "Wirksubstanzanteil",
  activeShareWhy: "das Produkt ist nicht mehr das ausgeliterte, und mit ihm ändert sich die Viskosität",
  density: "Dichte",
  densityWhy: "Volumen und Masse gehören nicht mehr zusammen wie beim Auslitern",
  strength: "Konzentration der Lösung",
  strengthWhy: "bei einer stärkeren oder schwächeren Lösung ist der Schlupf ein anderer",
  nothing: "leer",
  changed: (name, before, now, why) => `${name}: war ${before}, ist jetzt ${now}; ${why}`,
  noDrawDown: "noch keine Auslitermessung",
  enterHeldSpeed: "Drehzahl eintragen, mit der die Pumpe laufen soll",
  enterZeroStroke: "Hub eintragen, bei dem die Pumpe nichts mehr fördert (0 bei einer idealen)",
  enterSpeeds: "Drehzahl zu jeder Auslitermessung eintragen",
  units: { "%": "%", Hz: "Hz", mm: "mm", "% stroke": "% Hub" },
  strokeAtHeldSpeed: "% Hub bei der gehaltenen Drehzahl",
  strokeAtSpeed: (speedPct) => `% Hub bei ${speedPct} % Drehzahl`,
  noMoment: "zu keiner Auslitermessung ist der Zeitpunkt eingetragen",
  daysAgo: (days) => (days === 1 ? "vor 1 Tag" : `vor ${days} Tagen`),
  hoursAgo: (hours) => `vor ${hours} h`,
  withinHour: "in der letzten Stunde",
  tooOld: (ago, limitDays) =>
    `kalibriert ${ago}, älter als die erlaubten ${limitDays} Tage: Auslitern wiederholen`,
  noLimit: (ago) => `kalibriert ${ago}; kein Höchstalter festgelegt`,
  goodFor: (ago, limitDays) => `kalibriert ${ago}, gültig für ${limitDays} Tage`,
};
