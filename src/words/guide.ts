import { area } from "./language.ts";

/** The guide: its line under the strip, and what it says of each step. */
export const guideWords = area("guide", {
  name: "Guide",
  step: (place: number, steps: number) => `Step ${place} of ${steps}`,
  said: (place: number, steps: number, title: string) => `Step ${place} of ${steps}: ${title}.`,
  done: "The guide is done: the first pump settings are made.",
  see: "See the settings",
  close: "Close the guide",
  hidden: "The guide is hidden. Keys and words shows it again.",
  takeMe: "Take me there",
  all: "All steps",
  hide: "Hide the guide",
  standing: { done: "done", passed: "not needed any more", next: "next" },
  titles: {
    sample: "Take down the sample",
    solids: "Weigh the dishes",
    product: "Say what the polymer is",
    stock: "Make the stock solution",
    series: "Start a series and lay out its doses",
    readings: "Read the jars",
    curve: "Get a curve that says a dose",
    dose: "Pick a dose and approve it",
    feed: "Enter the feed",
    pump: "Make-down and pump",
    settings: "Read the pump settings",
  },
  sample: "Every dose is polymer per dry solids, so the sludge comes first.",
  solids: {
    dishes: "The dishes give the total solids.",
    masses:
      "Empty, with wet sludge, dried: the three masses give the total solids. A moisture balance may stand in meanwhile.",
  },
  product: {
    active: (product: string) =>
      `Enter the active share of ${product}: it stands on the supplier's certificate. Density and price often stand there too: pump rates and costs rest on them.`,
    needed: "A dose counts active polymer only, so the product and its active share are needed.",
  },
  stock: {
    open: (stock: string, missing: string) => `${stock}: ${missing}.`,
    enterDensity: "enter the density of the solution",
    needed: "The jars are dosed from a solution of known strength: neat product weighed into water.",
  },
  series: {
    needed: "A series is a row of jars from one sample, each at its own dose.",
    pickStock: "Pick the stock solution the jars are dosed from.",
    volume: "Say how much sludge each jar holds.",
    layOut: "Plan a ladder of doses and lay out its jars, or add jars with doses of your own.",
    allDosed: "Every jar has its dose.",
    undosed: (jar: string, missing: string) => `Jar ${jar} has no dose: ${missing}.`,
    enterSyringe: "enter its syringe volume",
  },
  readings: {
    next: (jar: string, unread: number) =>
      `Jar ${jar} is next in the running order; ${unread} ${unread === 1 ? "jar has" : "jars have"} no reading yet. "Run the jars" leads through mixing and timing.`,
    needed: "Mix, drain and read each jar: filtrate, drainage, cake.",
  },
  curve: {
    running: "The curves are being fitted.",
    moreJars: "Plan more jars",
    refused: (sentence: string) =>
      `${sentence} More jars help, or pick a dose by your own judgement in the Dose room.`,
    needed: "As soon as enough jars are read, each response is drawn against the dose.",
  },
  dose: "Look at the limits and the cost at each dose, then approve one with a reason and your name.",
  feed: {
    known: "the feed is known",
    needed: "How much sludge the machine is fed in an hour turns the dose into a rate.",
  },
  pump: {
    density: (product: string) =>
      `Enter the neat density of ${product}: a pump moves volumes, a dose counts mass. The approved dose stays.`,
    needed: "Say how the plant makes the polymer down, and draw its pump down at a few settings.",
    of: (pump: string, message: string) => `${pump}: ${message}`,
    draw: (sentence: string) => `${sentence} Catch what it gives in a timed minute, at two settings or more.`,
    add: (product: string) => `Add the pump that moves ${product}.`,
    thePolymer: "the polymer",
  },
  settings: {
    outside:
      "The flow that is needed lies outside the settings the pump was drawn down at: take draw-downs further out, or change the solution's strength.",
    needed: "With a dose, the feed and a pump line the setting follows.",
  },
});
