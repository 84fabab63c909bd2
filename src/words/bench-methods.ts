import { area } from "./language.ts";

/** From the sample to what is read of a jar: what each formula is for, the formula in plain signs, and where it comes from. */
export const benchMethodWords = area("benchMethods", {
  solids: {
    what: "Total and volatile solids",
    formula:
      "TS = 100 (dry - tare) / (wet - tare); VS = 100 (dry - ash) / (dry - tare); mean of the dishes, spread t(n - 1) s / sqrt(n) at 95 %",
    source: "Standard Methods 2540 G; EN 15934 and EN 15935 (numbers from memory)",
  },
  density: {
    what: "Sludge density, where not measured",
    formula:
      "1/rho = TS/rho_solids + (1 - TS)/rho_water; 1/rho_solids = VS/1.00 + (1 - VS)/2.50; VS 75 % assumed until the dishes are ashed",
    source: "textbook two-part density, from memory; the assumed VS is common practice, no source",
  },
  strength: {
    what: "Strength of a stock solution",
    formula: "active = active share x neat mass / whole mass; as supplied = neat mass / whole mass",
    source: "mass balance",
  },
  life: {
    what: "Usable-from and discard-after of a solution",
    formula: "by form and strength, unless the study has the supplier's own",
    source: "common practice, no source",
  },
  dose: {
    what: "Dose of a jar",
    formula:
      "D = 1000 x syringe x solution density x strength / (sample volume x sludge density x TS), kg active per t dry solids; as supplied = D / active share; 1 kg/t = 2 lb per short ton exactly",
    source: "mass balance, recomputed independently (25.00 mL of 0.2 % on 500 mL at 2.5 % gives 3.988 kg/t)",
  },
  doseUncertainty: {
    what: "Uncertainty of a dose",
    formula:
      "relative parts in quadrature; a limit of plus or minus L counts L / sqrt(3); parts shared by all jars are kept apart and cancel only where the plant uses the very same record",
    source: "JCGM 100:2008 (clause numbers from memory); the whole recomputed by Monte Carlo",
  },
  clarity: {
    what: "Turbidity and suspended solids of the filtrate",
    formula: "turbidity = reading x dilution; TSS = (dry - tare) / volume",
    source: "Standard Methods 2130 B and 2540 D (from memory)",
  },
  suctionTime: {
    what: "Capillary suction time",
    formula:
      "normalised = (CST - CST of water) / TS in g/L; at 20 °C = CST x viscosity at 20 °C / viscosity at the test's temperature",
    source:
      "Standard Methods 2710 G (number from memory); EN 14701-1; the correction by viscosity is from memory",
  },
  drainage: {
    what: "Drained share, press pressure and cake, time to filter",
    formula:
      "drained share = volume / (sample + added liquid); pressure = force / piston area; cake TS as for dishes; normalised time = time / TS in g/L",
    source:
      "EN 14701-4:2018 for the drainage; Standard Methods 2710 H for the filter (conditions from memory); the press is common practice, no source",
  },
  resistance: {
    what: "Specific resistance to filtration",
    formula:
      "t/V = b V + c over the straight part; SRF = 2 x pressure x area^2 x b / (viscosity x dry cake per volume of filtrate), water's viscosity at the test's temperature",
    source: "textbook cake filtration, from memory; recomputed independently (2.335e11 m/kg)",
  },
  viscosity: {
    what: "Viscosity of water",
    formula: "280.68 x^-1.9 + 511.45 x^-7.7 + 61.131 x^-19.6 + 0.45903 x^-40 µPa s, x = T / 300 K",
    source: "Pátek et al. 2009 (coefficients from memory, checked against 1.0016 mPa s at 20 °C)",
  },
  flocStrength: {
    what: "Floc broken and regrown",
    formula: "strength = broken / first size; recovery = (regrown - broken) / (first - broken)",
    source: "common practice, from memory",
  },
  mixing: {
    what: "Mixing energy",
    formula:
      "P = power number x density x n^3 x diameter^5; G = sqrt(P / (viscosity x volume)); pouring, at most: G = sqrt(pours x density x g x height / (viscosity x time)); in line: G = sqrt(pressure drop / (viscosity x residence time)); Camp number G t; water's viscosity stands for the sludge's",
    source: "textbook definitions, from memory; nominal, since sludge is thicker than water",
  },
  capture: {
    what: "Capture",
    formula:
      "R = C (F - (1 + d) E) / (F (C - E)), with feed F and filtrate E as TSS, cake C as TS, d added liquid over feed",
    source: "three-stream mass balance, recomputed independently",
  },
  plan: {
    what: "Doses of a plan",
    formula:
      "bracketing, a geometric ladder in duplicate, factorial or central composite corners at 1 / sqrt 2; every jar is filled up with blank water to one volume; the order is shuffled from a seed",
    source: "usual designs, from memory; the usual doses it starts from are common practice, no source",
  },
  quality: {
    what: "Quality flags",
    formula:
      "re-reads apart by more than 10 % (TSS, CST), 3 % (cake) or 20 % (SRF) of their mean; dishes by more than 5 %; the standard jar moved by more than 15 %; a sample older than a day; a dose outside the usual ones whose product with, or quotient by, the active share lies inside",
    source: "common practice, no source",
  },
});
