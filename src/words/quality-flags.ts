import { area } from "./language.ts";

/** What is worth knowing before a series' numbers are trusted: each flag's state, its sentence and what to do. */
export const qualityFlagWords = area("qualityFlags", {
  checkedThings:
    "sample age, solids, solution age, syringes, volumes, usual doses, re-reads, range, standard jar, running order, blanks",
  jar: (label: string) => `jar ${label}`,
  jars: (shown: string, last: string) => `jars ${shown} and ${last}`,
  moreJars: (count: number) => `${count} more`,
  offPlan: {
    word: "off plan",
    sentence: (jars: string, letter: string, pct: number) =>
      `In ${jars} polymer ${letter} is more than ${pct} % off its planned dose.`,
    todo: "Check the syringe volume, the strength and the solids; the fit uses what was really dosed.",
  },
  syringe: {
    word: "syringe too coarse",
    sentence: (jars: string, letter: string, pct: number) =>
      `In ${jars} the volume of solution ${letter} is too small for this syringe: its error is over ${pct} %.`,
    todo: "Use a weaker stock, a smaller syringe, or weigh what is injected.",
  },
  refill: {
    word: "more than one fill",
    sentence: (jars: string, letter: string, capacityMl: string) =>
      `In ${jars} solution ${letter} needs more than one fill of the ${capacityMl} mL syringe.`,
    todo: "Use a stronger stock or a larger syringe.",
  },
  dilution: {
    word: "unequal volumes",
    sentence: (spreadMl: string, pct: number) =>
      `What was added differs by ${spreadMl} mL between jars, over ${pct} % of the sample: the filtrate is diluted unequally.`,
    todo: "Bring every jar to the same volume with blank water.",
  },
  basis: {
    word: "neat for active?",
    sentence: (middle: string, low: string, high: string, source: string, other: string, unit: string) =>
      `The doses (${middle} ${unit} in the middle) lie outside the usual ${low} to ${high} ${unit} active of this sludge (${source}), but ${other} would lie inside: that is the slip of neat for active.`,
    readAsSupplied: (stock: string) =>
      `Check whether ${stock} was weighed as active where the sheet says as supplied, and the active share.`,
    readAsActive: (stock: string) =>
      `Check whether ${stock} was weighed as supplied where the sheet says active, and the active share.`,
  },
  reread: {
    word: "re-reads differ",
    sentence: (jar: string, response: string, difference: string, limitPct: number) =>
      `Jar ${jar}: ${response} was read ${difference} % apart, more than ${limitPct} % (common practice, no source).`,
    todo: "Read once more, or leave a reading out with a reason.",
  },
  overRange: {
    word: "over range",
    sentence: (jars: string, count: number) =>
      `${count === 1 ? "A reading" : "Readings"} of ${jars} ${count === 1 ? "is" : "are"} over the instrument's range: known only to lie above it.`,
    todo: "Dilute and read again where it matters; the fit takes it as a bound, never as a number.",
  },
  residue: {
    word: "filter residue",
    sentence: (jars: string) =>
      `The residue on the filter of ${jars} is outside 2.5 to 200 mg (Standard Methods 2540 D, 20th edition, quoted).`,
    todo: "Filter more, or less, and weigh again.",
  },
  drift: {
    word: "standard jar drifts",
    sentence: (response: string, drift: string, first: string, last: string, limitPct: number) =>
      `${response} of the standard jar moved by ${drift} % from jar ${first} to jar ${last}, more than ${limitPct} % (common practice, no source).`,
    todo: "The sludge or the solution changed: take a fresh sample or solution and repeat the later jars.",
  },
  order: {
    word: "order not kept",
    sentence: (jar: string) => `Jar ${jar} was run after a jar that stands behind it in the running order.`,
    todo: "Keep to the order: it is what tells an ageing sludge from a dose. Note why where it had to change.",
  },
  noPolymer: {
    word: "no jar without polymer",
    sentence: "No jar without polymer stands beside the dosed ones.",
    todo: "Run one jar with water in the place of polymer: it says what the polymer does at all.",
  },
  waterBlank: {
    word: "no water blank",
    sentence: "CST was read, but not of water on the same paper, so it cannot be compared with another day.",
    todo: "Time water on the same paper lot and enter it with the series.",
  },
  sampleTime: {
    word: "sample time unknown",
    sentence: "Nobody wrote down when the sample was taken, so its age cannot be watched.",
    todo: "Enter when it was taken.",
  },
  sampleAge: {
    old: "old sample",
    ageing: "ageing sample",
    now: (hours: string, freshHours: number) =>
      `The sample is ${hours} h old now; past ${freshHours} h sludge begins to change (common practice, no source).`,
    atLastJar: (hours: string, freshHours: number) =>
      `The sample is ${hours} h old at the last jar; past ${freshHours} h sludge begins to change (common practice, no source).`,
    oldTodo: "Take a fresh sample.",
    ageingTodo: "Watch the standard jar, and take a fresh sample where it drifts.",
  },
  provisional: {
    word: "TS provisional",
    sentence: "Total solids are the moisture balance's: every dose will move when the dishes are dry.",
    todo: "Enter the dry masses as soon as the dishes are cool.",
  },
  dishes: {
    word: "dishes differ",
    sentence: (difference: string, limitPct: number) =>
      `The dishes differ by ${difference} % of their mean, more than ${limitPct} % (Standard Methods 2540 G, from memory).`,
    todo: "Dry another dish, or leave one out with a reason.",
  },
  solutionTime: {
    word: "mixing time unknown",
    sentence: (stock: string) =>
      `Nobody wrote down when ${stock} was mixed, so its ageing and life cannot be watched.`,
    todo: "Enter when mixing started.",
  },
  solutionYoung: {
    word: "too young",
    sentence: (stock: string, jars: string) => `${stock} was not aged yet when it went into ${jars}.`,
    todo: "Repeat with the aged solution, or leave out with a reason.",
  },
  solutionLate: {
    word: "past its life",
    sentence: (stock: string, jars: string) => `${stock} was past its life when it went into ${jars}.`,
    todo: "Make a new solution and repeat, or leave out with a reason.",
  },
  solutionOver: {
    word: "discard",
    sentence: (stock: string) => `${stock} is past its life now.`,
    todo: "Make a new solution before the next jar.",
  },
  solutionAgeing: {
    word: "still ageing",
    sentence: (stock: string) => `${stock} is still ageing.`,
    todo: "Prepare the jars meanwhile.",
  },
});
