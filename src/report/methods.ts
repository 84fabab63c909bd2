/** One formula that a report rests on: what it is for, the formula in plain signs, and where it comes from. */
export interface Method {
  what: string;
  formula: string;
  source: string;
}

/** Every formula behind a report, in the order of the job. "From memory" and "no source" are said where they hold. */
export const methods: readonly Method[] = [
  {
    what: "Total and volatile solids",
    formula:
      "TS = 100 (dry - tare) / (wet - tare); VS = 100 (dry - ash) / (dry - tare); mean of the dishes, spread t(n - 1) s / sqrt(n) at 95 %",
    source: "Standard Methods 2540 G; EN 15934 and EN 15935 (numbers from memory)",
  },
  {
    what: "Sludge density, where not measured",
    formula:
      "1/rho = TS/rho_solids + (1 - TS)/rho_water; 1/rho_solids = VS/1.00 + (1 - VS)/2.50; VS 75 % assumed until the dishes are ashed",
    source: "textbook two-part density, from memory; the assumed VS is common practice, no source",
  },
  {
    what: "Strength of a stock solution",
    formula: "active = active share x neat mass / whole mass; as supplied = neat mass / whole mass",
    source: "mass balance",
  },
  {
    what: "Usable-from and discard-after of a solution",
    formula: "by form and strength, unless the study has the supplier's own",
    source: "common practice, no source",
  },
  {
    what: "Dose of a jar",
    formula:
      "D = 1000 x syringe x solution density x strength / (sample volume x sludge density x TS), kg active per t dry solids; as supplied = D / active share; 1 kg/t = 2 lb per short ton exactly",
    source: "mass balance, recomputed independently (25.00 mL of 0.2 % on 500 mL at 2.5 % gives 3.988 kg/t)",
  },
  {
    what: "Uncertainty of a dose",
    formula:
      "relative parts in quadrature; a limit of plus or minus L counts L / sqrt(3); parts shared by all jars are kept apart and cancel only where the plant uses the very same record",
    source: "JCGM 100:2008 (clause numbers from memory); the whole recomputed by Monte Carlo",
  },
  {
    what: "Turbidity and suspended solids of the filtrate",
    formula: "turbidity = reading x dilution; TSS = (dry - tare) / volume",
    source: "Standard Methods 2130 B and 2540 D (from memory)",
  },
  {
    what: "Specific resistance to filtration",
    formula:
      "t/V = b V + c over the straight part; SRF = 2 x pressure x area^2 x b / (viscosity x dry cake per volume of filtrate), water's viscosity at the test's temperature",
    source: "textbook cake filtration, from memory; recomputed independently (2.335e11 m/kg)",
  },
  {
    what: "Capture",
    formula:
      "R = C (F - (1 + d) E) / (F (C - E)), with feed F and filtrate E as TSS, cake C as TS, d added liquid over feed",
    source: "three-stream mass balance, recomputed independently",
  },
  {
    what: "Fits",
    formula:
      "least squares, on the natural log for turbidity, TSS and CST (values are then medians); readings beyond an instrument's range by maximum likelihood; a jar read again is one point",
    source: "standard statistics; the fitting code reproduces the NIST reference sets",
  },
  {
    what: "Choice among models",
    formula:
      "AICc = n ln(rss/n) + 2K + 2K(K + 1)/(n - K - 1), K parameters with the scatter; lack of fit against repeated jars at 5 %; within 2 is a tie",
    source: "Hurvich and Tsai 1989; Draper and Smith; Box and Draper (all from memory)",
  },
  {
    what: "Interval of a best dose",
    formula:
      "profile of the sum of squares at F(1, n - p), 95 %; for a parabola the same as Fieller's; the range covers all tied models",
    source: "Fieller 1954 (from memory); coverage simulated by this project",
  },
  {
    what: "Knee",
    formula:
      "dose of 95 % of the gain: ln 20 / rate (exponential), ed50 x 19^(1/slope) (log-logistic), mid + ln 19 / steepness (logistic); the corner of a plateau",
    source: "algebra of the models",
  },
  {
    what: "Limits and working window",
    formula:
      "a limit holds where the one-sided 95 % bound of the mean curve meets it, each limit by itself; the window is their overlap within the doses tested; guard band on the failing side",
    source: "standard statistics; the guard band of 10 % is common practice, no source",
  },
  {
    what: "Cost per tonne of dry solids",
    formula: "D x price / active share + capture / cake TS x disposal + (1 - capture) x return",
    source: "mass balance, recomputed independently",
  },
  {
    what: "Most desirable dose",
    formula: "geometric mean of desirabilities from worst (0) to best (1)",
    source: "Derringer and Suich 1980 (from memory)",
  },
  {
    what: "Two polymers",
    formula:
      "second-order surface in both doses, coded by midrange and half-range; its stationary point and their bounds",
    source: "Box and Draper; Box and Hunter 1954 (from memory)",
  },
  {
    what: "Dry-solids load and rates",
    formula:
      "DS = 1000 Q rho TS; active = DS D; neat = active / active share; solution = active / strength; make-up water = solution - neat; carrier to a lower strength = active / that strength - solution; water at 1.000 kg/L",
    source:
      "mass balance, recomputed independently (20 m³/h at 2.5 % and 4 kg/t gives 501.5 kg/h and 77.28 mL/min)",
  },
  {
    what: "Pump line and setting",
    formula:
      "flow = a + b x setting by least squares, never through the origin; setting = (flow - a) / b with standard error (s/b) sqrt(1 + 1/n + (setting - mean)^2 / Sxx); nothing outside the settings drawn down",
    source: "standard calibration statistics, recomputed independently (77.2846 mL/min gives 92.05 % ± 0.65)",
  },
  {
    what: "Repeatability, linearity and turndown of a pump",
    formula:
      "largest range at one setting, and largest distance of a mean from the line, over the flow at the top setting; highest over lowest flow",
    source:
      "API 675-style check: that standard covers reciprocating pumps only, and the reading of its terms is our own",
  },
  {
    what: "Cylinder band",
    formula:
      "95 % of one draw-down: pump scatter and line error, cylinder and stopwatch (half-width / sqrt(3)) in quadrature, with Student's factor at the effective degrees of freedom",
    source:
      "JCGM 100 for the sum (clause from memory); ± 1 mL and ± 0.3 s, unless the crew enters its own, are common practice, no source",
  },
  {
    what: "Machine loading",
    formula: "dry solids per hour / effective width, against the owner's own limits",
    source:
      "limits as entered; the demo's 40, 50 and 60 kg/h·m are starting values for one slow class of machine, common practice, no source",
  },
  {
    what: "Dose of a plant run",
    formula:
      "active polymer over dry solids, three ways: caught in the cylinder, the container's loss of mass, the pump line at the setting; further apart than 5 % a measurement is wrong",
    source: "mass balance; the 5 % is common practice, no source",
  },
  {
    what: "Bench-to-plant factor",
    formula:
      "geometric mean of plant dose over bench dose for one machine, sludge and product; range t(n - 1) s / sqrt(n) in logs",
    source: "standard statistics; usually 0.8 to 1.5 (common practice, no source)",
  },
  {
    what: "Drift watch",
    formula:
      "routine runs on a chart of individuals: beyond its limits, or eight in a row on one side of the middle",
    source: "Shewhart's charts, from memory",
  },
  {
    what: "Age of a sample",
    formula: "past a day it has changed: take a fresh one",
    source: "common practice, no source",
  },
];
