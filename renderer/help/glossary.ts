/** The trade's words as they are used here, each in a sentence: the panel lists all, `Term` shows one in its place. */
export const glossary = [
  {
    term: "active share",
    means: "The part of a product as supplied that is polymer, by mass; ask of which test.",
  },
  {
    term: "as supplied",
    means: "Counted as the product comes in its container: active divided by the active share.",
  },
  {
    term: "bench-to-plant factor",
    means: "The dose that the plant settled on over the dose that the jars gave.",
  },
  { term: "blank water", means: "Water added so that every jar holds the same volume." },
  {
    term: "cake",
    means: "What is left of the sludge once water was pressed out; its TS says how dry it is.",
  },
  {
    term: "capture",
    means: "The share of the feed's solids that ends up in the cake and not in the filtrate.",
  },
  {
    term: "carrier water",
    means: "Water added after make-down to thin the solution before it meets the sludge.",
  },
  {
    term: "censored",
    means: "Known only to lie above or below a value, as a reading over the instrument's range.",
  },
  {
    term: "chance to miss",
    means: "How often a limit would be missed at this dose if the feed's solids drift as entered.",
  },
  { term: "confidence band", means: "Where the true curve is expected to lie, at 95 %." },
  {
    term: "control limits",
    means: "Bounds within which routine runs wander by chance alone.",
  },
  {
    term: "CST",
    means: "Capillary suction time: how long water takes to spread between two marks in a paper.",
  },
  {
    term: "cylinder band",
    means: "Within what one catch in a cylinder may lie if the pump does what its line says.",
  },
  {
    term: "dose",
    means: "Kilograms of active polymer for each tonne of dry solids, unless the label says otherwise.",
  },
  {
    term: "drained volume",
    means: "Filtrate that ran off a jar's sludge within a fixed time: how fast it gives its water up.",
  },
  { term: "draw-down", means: "A timed catch of what a pump delivers at one setting." },
  { term: "dry solids (DS)", means: "What is left of sludge when all water is gone." },
  {
    term: "dry-solids load",
    means: "Dry solids that the machine is fed in an hour: feed flow times total solids.",
  },
  { term: "filtrate", means: "The water that drains or is pressed from the sludge." },
  {
    term: "filtrate turbidity",
    means: "How cloudy the filtrate is, in NTU or FNU: the lower, the fewer solids slipped through.",
  },
  {
    term: "flow per setting",
    means: "What a pump gives at each setting of its panel: the line through its draw-downs.",
  },
  { term: "guard band", means: "Distance kept from the edge where a limit fails." },
  { term: "interval", means: "The doses that the readings do not rule out, at 95 %." },
  { term: "jar", means: "One beaker of sludge, dosed and mixed on its own." },
  { term: "knee", means: "The dose above which a response gains little more." },
  {
    term: "lack of fit",
    means: "Whether a curve misses its points by more than repeated jars differ among themselves.",
  },
  { term: "make-down", means: "Dissolving a product into a solution of a known strength." },
  { term: "neat", means: "The product as supplied, before any water." },
  { term: "no-polymer jar", means: "A jar at dose 0, treated like the others." },
  {
    term: "plateau",
    means: "Where a response stays as it is although the dose goes on rising.",
  },
  {
    term: "proven range",
    means: "The settings between which draw-downs were taken; beyond it nothing is offered.",
  },
  { term: "re-read", means: "The same jar read again; it is averaged, and never counts as another jar." },
  { term: "replicate", means: "Another jar, separately conditioned, at the same dose." },
  { term: "series", means: "A row of jars from one sample with one polymer, or two in sequence." },
  { term: "SRF", means: "Specific resistance to filtration: how hard the cake holds its water back." },
  { term: "standard jar", means: "One jar repeated through a series, to show sludge or solution ageing." },
  {
    term: "stock solution",
    means: "Product dissolved for the bench at a known strength, from which the syringes are filled.",
  },
  {
    term: "tie",
    means: "Models that explain the jars about equally well; the range then covers what all of them say.",
  },
  {
    term: "TS, VS, TSS",
    means: "Total solids; their volatile share; suspended solids, without what is dissolved.",
  },
  { term: "turndown", means: "The highest flow of a pump over its lowest." },
  { term: "water blank", means: "Water timed on the same CST paper." },
  { term: "working window", means: "The doses at which all limits hold at once." },
] as const satisfies readonly { term: string; means: string }[];

export type TermName = (typeof glossary)[number]["term"];

/** What a word of the glossary means. */
export function meaningOf(name: TermName): string {
  return glossary.find(({ term }) => term === name)!.means;
}
