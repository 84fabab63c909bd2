import { area } from "./language.ts";

/** The trade's words as they are used here, each with its meaning in a sentence. The key is the English term, by which screens name a word. */
export const glossaryWords = area("glossary", {
  "active share": {
    term: "active share",
    means: "The part of a product as supplied that is polymer, by mass; ask of which test.",
  },
  "as supplied": {
    term: "as supplied",
    means: "Counted as the product comes in its container: active divided by the active share.",
  },
  "bench-to-plant factor": {
    term: "bench-to-plant factor",
    means: "The dose that the plant settled on over the dose that the jars gave.",
  },
  "blank water": { term: "blank water", means: "Water added so that every jar holds the same volume." },
  cake: {
    term: "cake",
    means: "What is left of the sludge once water was pressed out; its TS says how dry it is.",
  },
  capture: {
    term: "capture",
    means: "The share of the feed's solids that ends up in the cake and not in the filtrate.",
  },
  "carrier water": {
    term: "carrier water",
    means: "Water added after make-down to thin the solution before it meets the sludge.",
  },
  censored: {
    term: "censored",
    means: "Known only to lie above or below a value, as a reading over the instrument's range.",
  },
  "chance to miss": {
    term: "chance to miss",
    means: "How often a limit would be missed at this dose if the feed's solids drift as entered.",
  },
  "confidence band": { term: "confidence band", means: "Where the true curve is expected to lie, at 95 %." },
  "control limits": {
    term: "control limits",
    means: "Bounds within which routine runs wander by chance alone.",
  },
  CST: {
    term: "CST",
    means: "Capillary suction time: how long water takes to spread between two marks in a paper.",
  },
  "cylinder band": {
    term: "cylinder band",
    means: "Within what one catch in a cylinder may lie if the pump does what its line says.",
  },
  dose: {
    term: "dose",
    means: "Kilograms of active polymer for each tonne of dry solids, unless the label says otherwise.",
  },
  "drained volume": {
    term: "drained volume",
    means: "Filtrate that ran off a jar's sludge within a fixed time: how fast it gives its water up.",
  },
  "draw-down": { term: "draw-down", means: "A timed catch of what a pump delivers at one setting." },
  "dry solids (DS)": { term: "dry solids (DS)", means: "What is left of sludge when all water is gone." },
  "dry-solids load": {
    term: "dry-solids load",
    means: "Dry solids that the machine is fed in an hour: feed flow times total solids.",
  },
  filtrate: { term: "filtrate", means: "The water that drains or is pressed from the sludge." },
  "filtrate turbidity": {
    term: "filtrate turbidity",
    means: "How cloudy the filtrate is, in NTU or FNU: the lower, the fewer solids slipped through.",
  },
  "flow per setting": {
    term: "flow per setting",
    means: "What a pump gives at each setting of its panel: the line through its draw-downs.",
  },
  "guard band": { term: "guard band", means: "Distance kept from the edge where a limit fails." },
  interval: { term: "interval", means: "The doses that the readings do not rule out, at 95 %." },
  jar: { term: "jar", means: "One beaker of sludge, dosed and mixed on its own." },
  knee: { term: "knee", means: "The dose above which a response gains little more." },
  "lack of fit": {
    term: "lack of fit",
    means: "Whether a curve misses its points by more than repeated jars differ among themselves.",
  },
  "make-down": { term: "make-down", means: "Dissolving a product into a solution of a known strength." },
  neat: { term: "neat", means: "The product as supplied, before any water." },
  "no-polymer jar": { term: "no-polymer jar", means: "A jar at dose 0, treated like the others." },
  plateau: { term: "plateau", means: "Where a response stays as it is although the dose goes on rising." },
  "proven range": {
    term: "proven range",
    means: "The settings between which draw-downs were taken; beyond it nothing is offered.",
  },
  "re-read": {
    term: "re-read",
    means: "The same jar read again; it is averaged, and never counts as another jar.",
  },
  replicate: { term: "replicate", means: "Another jar, separately conditioned, at the same dose." },
  series: { term: "series", means: "A row of jars from one sample with one polymer, or two in sequence." },
  SRF: { term: "SRF", means: "Specific resistance to filtration: how hard the cake holds its water back." },
  "standard jar": {
    term: "standard jar",
    means: "One jar repeated through a series, to show sludge or solution ageing.",
  },
  "stock solution": {
    term: "stock solution",
    means: "Product dissolved for the bench at a known strength, from which the syringes are filled.",
  },
  tie: {
    term: "tie",
    means: "Models that explain the jars about equally well; the range then covers what all of them say.",
  },
  "TS, VS, TSS": {
    term: "TS, VS, TSS",
    means: "Total solids; their volatile share; suspended solids, without what is dissolved.",
  },
  turndown: { term: "turndown", means: "The highest flow of a pump over its lowest." },
  "water blank": { term: "water blank", means: "Water timed on the same CST paper." },
  "working window": { term: "working window", means: "The doses at which all limits hold at once." },
});
