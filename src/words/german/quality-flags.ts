import type { qualityFlagWords } from "../quality-flags.ts";

export const qualityFlags: typeof qualityFlagWords = {
  checkedThings:
    "Alter der Probe, Trockenrückstand, Alter der Lösungen, Spritzen, Volumina, übliche Dosen, Wiederholungsablesungen, Messbereich, Standardbecher, Reihenfolge, Blindwerte",
  jar: (label) => `Becher ${label}`,
  jars: (shown, last) => `Becher ${shown} und ${last}`,
  moreJars: (count) => (count === 1 ? "einem weiteren" : `${count} weiteren`),
  offPlan: {
    word: "weicht vom Plan ab",
    sentence: (jars, letter, pct) =>
      `In ${jars} weicht Polymer ${letter} um mehr als ${pct} % von der geplanten Dosis ab.`,
    todo: "Spritzenvolumen, Konzentration der Lösung und Trockenrückstand prüfen; die Anpassung rechnet mit dem, was wirklich dosiert wurde.",
  },
  syringe: {
    word: "Spritze zu grob",
    sentence: (jars, letter, pct) =>
      `In ${jars} ist das Volumen der Lösung ${letter} für diese Spritze zu klein: Ihr Fehler liegt über ${pct} %.`,
    todo: "Schwächere Stammlösung oder kleinere Spritze verwenden, oder die Zugabe wiegen.",
  },
  refill: {
    word: "mehr als eine Füllung",
    sentence: (jars, letter, capacityMl) =>
      `In ${jars} braucht Lösung ${letter} mehr als eine Füllung der ${capacityMl}-mL-Spritze.`,
    todo: "Stärkere Stammlösung oder größere Spritze verwenden.",
  },
  dilution: {
    word: "ungleiche Volumina",
    sentence: (spreadMl, pct) =>
      `Die zugegebenen Volumina unterscheiden sich zwischen den Bechern um ${spreadMl} mL, mehr als ${pct} % der Probe: Das Filtrat ist ungleich verdünnt.`,
    todo: "Jeden Becher mit Ausgleichswasser auf dasselbe Volumen bringen.",
  },
  basis: {
    word: "Handelsware statt Wirksubstanz?",
    sentence: (middle, low, high, source, other, unit) =>
      `Die Dosen (${middle} ${unit} in der Mitte) liegen außerhalb der für diesen Schlamm üblichen ${low} bis ${high} ${unit} Wirksubstanz (${source}), aber ${other} läge innerhalb: So sieht es aus, wenn Handelsware und Wirksubstanz verwechselt werden.`,
    readAsSupplied: (stock) =>
      `Prüfen, ob ${stock} als Wirksubstanz eingewogen wurde, wo das Blatt Handelsware angibt; dazu den Wirksubstanzanteil.`,
    readAsActive: (stock) =>
      `Prüfen, ob ${stock} als Handelsware eingewogen wurde, wo das Blatt Wirksubstanz angibt; dazu den Wirksubstanzanteil.`,
  },
  reread: {
    word: "Wiederholungsablesungen weichen ab",
    sentence: (jar, response, difference, limitPct) =>
      `Becher ${jar}: Die Ablesungen (${response}) liegen ${difference} % auseinander, mehr als ${limitPct} % (übliche Praxis, ohne Quelle).`,
    todo: "Noch einmal ablesen oder eine Ablesung mit Begründung weglassen.",
  },
  overRange: {
    word: "über dem Messbereich",
    sentence: (jars, count) =>
      count === 1
        ? `Eine Ablesung von ${jars} liegt über dem Messbereich des Geräts: Bekannt ist nur, dass der Wert darüber liegt.`
        : `Ablesungen von ${jars} liegen über dem Messbereich des Geräts: Bekannt ist nur, dass die Werte darüber liegen.`,
    todo: "Wo es darauf ankommt, verdünnen und neu ablesen; die Anpassung nimmt den Wert als Schranke, nie als Zahl.",
  },
  residue: {
    word: "Filterrückstand",
    sentence: (jars) =>
      `Der Rückstand auf dem Filter von ${jars} liegt außerhalb von 2,5 bis 200 mg (Standard Methods 2540 D, 20. Auflage, zitiert).`,
    todo: "Mehr oder weniger filtrieren und neu wiegen.",
  },
  drift: {
    word: "Standardbecher driftet",
    sentence: (response, drift, first, last, limitPct) =>
      `${response}: Der Standardbecher hat sich von Becher ${first} bis Becher ${last} um ${drift} % verändert, mehr als ${limitPct} % (übliche Praxis, ohne Quelle).`,
    todo: "Schlamm oder Lösung haben sich verändert: frische Probe nehmen oder Lösung neu ansetzen und die späteren Becher wiederholen.",
  },
  order: {
    word: "Reihenfolge nicht eingehalten",
    sentence: (jar) => `Becher ${jar} lief nach einem Becher, der in der Reihenfolge hinter ihm steht.`,
    todo: "Reihenfolge einhalten: An ihr lässt sich alternder Schlamm von einer Dosis unterscheiden. Wo sie geändert werden musste, den Grund notieren.",
  },
  noPolymer: {
    word: "kein Becher ohne Polymer",
    sentence: "Neben den dosierten Bechern steht keiner ohne Polymer.",
    todo: "Einen Becher mit Wasser anstelle des Polymers ansetzen: Er zeigt, was das Polymer überhaupt bewirkt.",
  },
  waterBlank: {
    word: "kein Wasserblindwert",
    sentence:
      "CST wurde abgelesen, aber nicht mit Wasser auf demselben Papier; mit einem anderen Tag lässt sich der Wert so nicht vergleichen.",
    todo: "Wasser auf derselben Papiercharge messen und bei der Reihe eintragen.",
  },
  sampleTime: {
    word: "Probenahmezeit unbekannt",
    sentence: "Niemand hat notiert, wann die Probe genommen wurde; ihr Alter lässt sich so nicht überwachen.",
    todo: "Zeitpunkt der Probenahme eintragen.",
  },
  sampleAge: {
    old: "alte Probe",
    ageing: "alternde Probe",
    now: (hours, freshHours) =>
      `Die Probe ist jetzt ${hours} h alt; nach ${freshHours} h beginnt Schlamm sich zu verändern (übliche Praxis, ohne Quelle).`,
    atLastJar: (hours, freshHours) =>
      `Die Probe war beim letzten Becher ${hours} h alt; nach ${freshHours} h beginnt Schlamm sich zu verändern (übliche Praxis, ohne Quelle).`,
    oldTodo: "Frische Probe nehmen.",
    ageingTodo: "Standardbecher beobachten und eine frische Probe nehmen, sobald er driftet.",
  },
  provisional: {
    word: "TR vorläufig",
    sentence:
      "Der Trockenrückstand stammt von der Feuchtewaage: Jede Dosis verschiebt sich, wenn die Schalen trocken sind.",
    todo: "Trockenmassen eintragen, sobald die Schalen abgekühlt sind.",
  },
  dishes: {
    word: "Schalen weichen ab",
    sentence: (difference, limitPct) =>
      `Die Schalen weichen um ${difference} % ihres Mittelwerts voneinander ab, mehr als ${limitPct} % (Standard Methods 2540 G, aus dem Gedächtnis).`,
    todo: "Eine weitere Schale trocknen oder eine mit Begründung weglassen.",
  },
  solutionTime: {
    word: "Ansetzzeit unbekannt",
    sentence: (stock) =>
      `Niemand hat notiert, wann ${stock} angesetzt wurde; Reifung und Haltbarkeit lassen sich so nicht überwachen.`,
    todo: "Beginn des Ansetzens eintragen.",
  },
  solutionYoung: {
    word: "zu jung",
    sentence: (stock, jars) => `${stock} war bei der Zugabe noch nicht gereift (in ${jars}).`,
    todo: "Mit der gereiften Lösung wiederholen oder mit Begründung weglassen.",
  },
  solutionLate: {
    word: "nicht mehr haltbar",
    sentence: (stock, jars) => `${stock} war bei der Zugabe nicht mehr haltbar (in ${jars}).`,
    todo: "Neue Lösung ansetzen und wiederholen oder mit Begründung weglassen.",
  },
  solutionOver: {
    word: "verwerfen",
    sentence: (stock) => `${stock} ist jetzt nicht mehr haltbar.`,
    todo: "Vor dem nächsten Becher eine neue Lösung ansetzen.",
  },
  solutionAgeing: {
    word: "reift noch",
    sentence: (stock) => `${stock} reift noch.`,
    todo: "In der Zwischenzeit die Becher vorbereiten.",
  },
};
