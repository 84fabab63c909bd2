import type { measurementWords } from "../measurements.ts";

const nominal = (temperatureAssumed: boolean) =>
  `Nennwert: Die Viskosität von Wasser steht für die des dickeren Schlamms; G = sqrt(P / (mu V)), Camp-Zahl G t${temperatureAssumed ? "; 20 °C angenommen, keine Temperatur eingetragen" : ""}`;

export const measurements: typeof measurementWords = {
  suctionTime: {
    standard: "Standard Methods 2710 G (Nummer aus dem Gedächtnis); EN 14701-1",
    mean: (readings, reservoirMm) =>
      `CST, Mittel aus ${readings}${reservoirMm === null ? "" : `, Trichter ${reservoirMm} mm`}`,
    meanFormula: "Mittel der Ablesungen; Streuung t(n - 1) s / sqrt(n) bei 95 %",
    reading: (number) => `Ablesung ${number}`,
    meanInput: "CST, Mittel",
    water: "Wasser auf demselben Papier",
    enterWater: "CST von Wasser auf demselben Papier eintragen",
    normalised: "CST über Wasser, je g/L",
    normalisedFormula: "(CST - Wasser) / abfiltrierbare Stoffe",
    warmed: "CST bei 20 °C",
    warmedFormula: "CST x Viskosität bei 20 °C / Viskosität bei der Temperatur",
    warmedStandard:
      "Standard Methods 2710 G (Nummer aus dem Gedächtnis); EN 14701-1; Viskosität von Wasser, ohne Wirkung des Papiers",
    enterTemperature: "Temperatur der Probe eintragen",
  },
  feedSolids: "abfiltrierbare Stoffe im Zulauf",
  enterFeedSolids: "abfiltrierbare Stoffe des Zulaufs eintragen",
  temperature: "Temperatur",
  time: "Zeit",
  drainage: {
    standard: "EN 14701-4:2018, Entwässerbarkeit von geflocktem Schlamm",
    at: (seconds) => `abgelaufen nach ${seconds} s`,
    formula: "100 V / (Probe + Zugegebenes)",
    drained: "abgelaufen",
    sample: "Probe",
    added: "zugegeben",
    needsVolumes: "braucht die Volumina in diesem Becher",
  },
  filterTime: {
    standard: "Standard Methods 2710 H (Bedingungen aus dem Gedächtnis)",
    title: "Filtrierzeit, je g/L",
    formula: "Zeit / abfiltrierbare Stoffe",
  },
  resistance: {
    standard: "EN 14701-2:2013; Form für konstanten Druck, aus dem Gedächtnis",
    title: "spezifischer Filtrationswiderstand",
    formula: "2 Druck Fläche^2 b / (Viskosität x Kuchen), t/V = b V + c",
    medium: "Widerstand des Filtermittels",
    mediumFormula: "c x Druck x Fläche / Viskosität",
    pointsUsed: "benutzte Punkte",
    points: (first, last, of) => `${first} bis ${last} von ${of}`,
    diameter: "Filterdurchmesser",
    pressure: "Druck",
    cake: "trockener Kuchen je Filtrat",
  },
  floc: {
    standard: "übliche Praxis; Festigkeit d2 / d1, Erholung (d3 - d2) / (d1 - d2), aus dem Gedächtnis",
    strength: "Flockenfestigkeit",
    recovery: "Erholung der Flocke",
    first: "Flocke zuerst, d1",
    broken: "zerschert, d2",
    regrown: "nachgewachsen, d3",
  },
  zeta: { title: "Zetapotential", asRead: "wie abgelesen", read: "abgelesen" },
  mixing: {
    standard: nominal,
    pouringStandard: (temperatureAssumed) =>
      `${nominal(temperatureAssumed)}; obere Grenze, die ganze Fallenergie gezählt`,
    gradient: {
      fast: "G beim schnellen Rühren",
      first: "G beim Einrühren des ersten Polymers",
      slow: "G beim langsamen Rühren",
    },
    camp: {
      fast: "Gt beim schnellen Rühren",
      first: "Gt beim Einrühren des ersten Polymers",
      slow: "Gt beim langsamen Rühren",
    },
    campFormula: "G x Zeit",
    speed: "Drehzahl",
    powerNumber: "Leistungskennzahl",
    stirrerDiameter: "Rührerdurchmesser",
    liquid: "Flüssigkeit",
    enterStirrer: "Durchmesser und Leistungskennzahl des Rührers eintragen",
    enterSampleVolume: "Probenvolumen eintragen",
    pouringGradient: "G beim Umschütten",
    pouringCamp: "Gt beim Umschütten",
    pours: "Umschütten, Anzahl",
    height: "Höhe",
    timeForAll: "Zeit für alles Umschütten",
  },
  press: {
    standard: "Kraft durch Fläche; keine gemeinsame Norm für Presskuchen, übliche Praxis",
    formula: "Kraft / Kolbenfläche",
    force: "Kraft",
    piston: "Kolben",
    asTyped: "wie eingetragen",
    pressure: "Druck",
  },
};
