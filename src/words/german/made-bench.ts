import type { madeBenchWords } from "../made-bench.ts";

export const madeBench: typeof madeBenchWords = {
  recipe:
    "Handelsware = gewünschte Konzentration x gesamte Lösung / Wirksubstanzanteil; ihr Volumen = Handelsware / Dichte; Wasser = gesamte Lösung - Handelsware; als Handelsware = gewünschte Konzentration / Wirksubstanzanteil",
  life: "verwendbar ab = Beginn des Ansetzens + Reifezeit; verwerfen nach = Beginn des Ansetzens + Haltbarkeit",
  designs: {
    geometric: "Dosis i = niedrigste x (höchste / niedrigste)^((i - 1) / (Stufen - 1))",
    bracketing: "Dosis i = Schätzwert x (1 + (i - Mitte) x Stufe)",
    "fix-one":
      "A in gleichen Schritten von der niedrigsten zur höchsten, B in gleichen Verhältnissen (gleichen Schritten ab 0) bei jeder davon",
    factorial: "niedrigste, mittlere und höchste von A mit jeder von B, und die Mitte beider noch einmal",
    "central-composite":
      "Mitte ± halbe Spanne von jeder, Ecken bei halber Spanne / sqrt 2 beider, und die Mitte beider noch einmal",
  },
  syringe:
    "Spritze = Dosis x Probenvolumen x Schlammdichte x Trockenrückstand / (1000 x Dichte der Lösung x Konzentration)",
  blankWater:
    "Ausgleichswasser = das meiste, was ein Becher erhält, - was die Spritzen dieses Bechers enthalten",
  doseError:
    "das Doppelte (k = 2) der Wurzel aus der Summe der quadrierten relativen Standardfehler; eine Grenze ± L zählt L / sqrt 3; gemeinsam: Massen und Wirksubstanzanteil der Lösung, Trockenrückstand; je Becher: Spritze, Probenvolumen",
  inputs: {
    wanted: "gewünschte Konzentration",
    whole: "gesamte Lösung",
    activeShare: "Wirksubstanzanteil",
    density: "Dichte der Handelsware",
    mixed: "Beginn des Ansetzens",
    ageing: "Reifezeit",
    life: "Haltbarkeit",
    low: "niedrigste Dosis",
    high: "höchste Dosis",
    steps: "Stufen",
    guess: "Schätzwert",
    step: "Stufe",
    lowB: "niedrigste Dosis B",
    highB: "höchste Dosis B",
    stepsB: "Stufen von B",
    seed: "Startwert der Reihenfolge",
    sample: "Probenvolumen",
    sludgeDensity: "Schlammdichte",
    solids: "Trockenrückstand",
    strengthA: "Konzentration der Lösung A",
    strengthB: "Konzentration der Lösung B",
    solutionDensity: "Dichte der Lösung A",
    most: "das meiste, was hinzukommt",
    neatMass: "Standardfehler der Masse der Handelsware",
    shareError: "Standardfehler des Wirksubstanzanteils",
    wholeMass: "Standardfehler der Gesamtmasse",
    solidsError: "Standardfehler des Trockenrückstands",
    syringeLimit: "Spritze genau auf ±",
    sampleLimit: "Probenvolumen genau auf ±",
    shared: "allen Bechern gemeinsam, k = 1",
    own: "je Becher, k = 1",
  },
  titles: {
    planDose: "Dosen des Plans",
    planDoseB: "Dosen B des Plans",
    planSyringe: (letter) => `Spritzenvolumina von ${letter} im Plan`,
    planWater: "Ausgleichswasser des Plans",
    doseError: "wie genau eine Dosis bekannt ist",
    flag: (word) => `der Hinweis „${word}“`,
  },
};
