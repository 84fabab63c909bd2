export const sludgeClasses = [
  { value: "primary", label: "primary" },
  { value: "excess", label: "excess (waste activated)" },
  { value: "mixed", label: "primary and excess, blended" },
  { value: "digested", label: "digested" },
  { value: "aerobic", label: "aerobically stabilised" },
  { value: "flotation", label: "flotation froth" },
  { value: "livestock", label: "livestock waste" },
  { value: "water-works", label: "water-works residue" },
  { value: "other", label: "other" },
];
