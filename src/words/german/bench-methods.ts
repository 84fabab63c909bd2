import type { benchMethodWords } from "../bench-methods.ts";

export const benchMethods: typeof benchMethodWords = {
  solids: {
    what: "Trockenrückstand und Glühverlust",
    formula:
      "TR = 100 (trocken - leer) / (nass - leer); oTR = 100 (trocken - Asche) / (trocken - leer); Mittel der Schalen, Streuung t(n - 1) s / sqrt(n) bei 95 %",
    source: "Standard Methods 2540 G; EN 15934 und EN 15935 (Nummern aus dem Gedächtnis)",
  },
  density: {
    what: "Dichte des Schlamms, wo nicht gemessen",
    formula:
      "1/rho = TR/rho_Feststoff + (1 - TR)/rho_Wasser; 1/rho_Feststoff = oTR/1,00 + (1 - oTR)/2,50; oTR 75 % angenommen, bis die Schalen geglüht sind",
    source:
      "Lehrbuchdichte aus zwei Teilen, aus dem Gedächtnis; der angenommene oTR ist übliche Praxis, ohne Quelle",
  },
  strength: {
    what: "Konzentration einer Stammlösung",
    formula:
      "Wirksubstanz = Wirksubstanzanteil x Masse Handelsware / Gesamtmasse; als Handelsware = Masse Handelsware / Gesamtmasse",
    source: "Massenbilanz",
  },
  life: {
    what: "„Verwendbar ab“ und „verwerfen nach“ einer Lösung",
    formula: "nach Lieferform und Konzentration, sofern die Studie nicht die Angaben des Lieferanten enthält",
    source: "übliche Praxis, ohne Quelle",
  },
  dose: {
    what: "Dosis eines Bechers",
    formula:
      "D = 1000 x Spritze x Dichte der Lösung x Konzentration / (Probenvolumen x Dichte des Schlamms x TR), kg WS je t TR; als Handelsware = D / Wirksubstanzanteil; 1 kg/t = 2 lb je short ton genau",
    source:
      "Massenbilanz, unabhängig nachgerechnet (25,00 mL zu 0,2 % auf 500 mL zu 2,5 % ergeben 3,988 kg/t)",
  },
  doseUncertainty: {
    what: "Unsicherheit einer Dosis",
    formula:
      "relative Anteile quadratisch addiert; eine Grenze von plus oder minus L zählt L / sqrt(3); was alle Becher teilen, wird getrennt geführt und hebt sich nur auf, wo der Betrieb genau denselben Eintrag benutzt",
    source: "JCGM 100:2008 (Abschnitte aus dem Gedächtnis); das Ganze mit Monte Carlo nachgerechnet",
  },
  clarity: {
    what: "Trübung und abfiltrierbare Stoffe des Filtrats",
    formula: "Trübung = Ablesung x Verdünnung; TSS = (trocken - leer) / Volumen",
    source: "Standard Methods 2130 B und 2540 D (aus dem Gedächtnis)",
  },
  suctionTime: {
    what: "Kapillare Fließzeit",
    formula:
      "normiert = (CST - CST von Wasser) / TR in g/L; bei 20 °C = CST x Viskosität bei 20 °C / Viskosität bei der Temperatur des Versuchs",
    source:
      "Standard Methods 2710 G (Nummer aus dem Gedächtnis); EN 14701-1; die Korrektur über die Viskosität ist aus dem Gedächtnis",
  },
  drainage: {
    what: "Abgelaufener Anteil, Pressdruck und Kuchen, Filtrierzeit",
    formula:
      "abgelaufener Anteil = Volumen / (Probe + zugegebene Flüssigkeit); Druck = Kraft / Kolbenfläche; Kuchen-TR wie bei den Schalen; normierte Zeit = Zeit / TR in g/L",
    source:
      "EN 14701-4:2018 für das Ablaufen; Standard Methods 2710 H für den Filter (Bedingungen aus dem Gedächtnis); die Presse ist übliche Praxis, ohne Quelle",
  },
  resistance: {
    what: "Spezifischer Filtrationswiderstand",
    formula:
      "t/V = b V + c über den geraden Teil; SRF = 2 x Druck x Fläche^2 x b / (Viskosität x trockener Kuchen je Volumen Filtrat), Viskosität von Wasser bei der Temperatur des Versuchs",
    source: "Kuchenfiltration nach Lehrbuch, aus dem Gedächtnis; unabhängig nachgerechnet (2,335e11 m/kg)",
  },
  viscosity: {
    what: "Viskosität von Wasser",
    formula: "280,68 x^-1,9 + 511,45 x^-7,7 + 61,131 x^-19,6 + 0,45903 x^-40 µPa s mit x = T / 300 K",
    source: "Pátek u. a. 2009 (Koeffizienten aus dem Gedächtnis, geprüft gegen 1,0016 mPa s bei 20 °C)",
  },
  flocStrength: {
    what: "Flocke zerschert und nachgewachsen",
    formula: "Festigkeit = zerschert / zuerst; Erholung = (nachgewachsen - zerschert) / (zuerst - zerschert)",
    source: "übliche Praxis, aus dem Gedächtnis",
  },
  mixing: {
    what: "Mischenergie",
    formula:
      "P = Leistungskennzahl x Dichte x n^3 x Durchmesser^5; G = sqrt(P / (Viskosität x Volumen)); beim Umschütten höchstens: G = sqrt(Anzahl x Dichte x g x Höhe / (Viskosität x Zeit)); in der Leitung: G = sqrt(Druckverlust / (Viskosität x Verweilzeit)); Camp-Zahl G t; die Viskosität von Wasser steht für die des Schlamms",
    source: "Begriffe aus dem Lehrbuch, aus dem Gedächtnis; nur Nennwerte, da Schlamm zäher ist als Wasser",
  },
  capture: {
    what: "Abscheidegrad",
    formula:
      "R = C (F - (1 + d) E) / (F (C - E)), mit Zulauf F und Filtrat E als TSS, Kuchen C als TR, d zugegebene Flüssigkeit je Zulauf",
    source: "Massenbilanz über drei Ströme, unabhängig nachgerechnet",
  },
  plan: {
    what: "Dosen eines Plans",
    formula:
      "um einen Schätzwert herum, eine geometrische Dosisleiter mit doppelten Bechern, faktorielle oder zentral zusammengesetzte Ecken bei 1 / sqrt 2; jeder Becher wird mit Ausgleichswasser auf ein Volumen gebracht; die Reihenfolge wird aus einem Startwert gemischt",
    source:
      "übliche Versuchspläne, aus dem Gedächtnis; die üblichen Dosen am Anfang sind übliche Praxis, ohne Quelle",
  },
  quality: {
    what: "Qualitätshinweise",
    formula:
      "Wiederholungsablesungen, die um mehr als 10 % (TSS, CST), 3 % (Kuchen) oder 20 % (SRF) ihres Mittels auseinander liegen; Schalen um mehr als 5 %; der Standardbecher um mehr als 15 % gewandert; eine Probe älter als ein Tag; eine Dosis außerhalb der üblichen, die mit dem Wirksubstanzanteil malgenommen oder durch ihn geteilt innerhalb liegt",
    source: "übliche Praxis, ohne Quelle",
  },
};
