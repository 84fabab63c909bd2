export type ProductForm = "dry" | "emulsion" | "dispersion" | "solution" | "mannich" | "metal-salt";

/** How long a solution must stand before use and how soon it is to be thrown away. */
export interface SolutionWindow {
  ageingMin: number;
  lifeHours: number;
}

/**
 * Ageing and life of a bench solution by form and active strength: common practice, no source. A supplier's own
 * figures replace them. Ready-made solutions and metal salts need no ageing.
 */
export function solutionWindow(form: ProductForm, activePct: number | null): SolutionWindow {
  const lifeHours = activePct !== null && activePct >= 0.5 ? 24 : 8;
  switch (form) {
    case "dry":
      return { ageingMin: 60, lifeHours };
    case "emulsion":
    case "dispersion":
      return { ageingMin: 30, lifeHours };
    case "mannich":
      return { ageingMin: 15, lifeHours: 8 };
    case "solution":
    case "metal-salt":
      return { ageingMin: 0, lifeHours: 24 };
  }
}
