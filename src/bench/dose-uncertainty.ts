/**
 * One input of a jar's dose with its relative standard uncertainty. `shared` errors stretch the whole dose axis and
 * never show as scatter; the others differ from jar to jar.
 */
export interface UncertaintyPart {
  name:
    "neat-mass" | "active-share" | "total-mass" | "syringe" | "sample-volume" | "total-solids" | "density";
  relative: number;
  shared: boolean;
}

/** Relative standard uncertainty of a value known within plus or minus `limit` (rectangular). */
export function rectangular(limit: number, value: number): number {
  return limit / Math.sqrt(3) / value;
}

const quadrature = (parts: UncertaintyPart[]) =>
  Math.sqrt(parts.reduce((sum, part) => sum + part.relative ** 2, 0));

export interface DoseUncertainty {
  total: number;
  /** between jars: syringe and sample volume */
  perJar: number;
  /** common to all jars of a series */
  shared: number;
  /** what of the shared part is left once the plant converts with the very same figures */
  sharedLeft: number;
}

/**
 * Relative standard uncertainty of a dose by propagation of independent inputs (JCGM 100:2008, 5.1.6, clause from
 * memory). `cancelled` names shared parts that the plant's own conversion repeats with the same record: only by
 * provenance (same lot's active share, that very sample's solids and density); the stock's masses never cancel.
 */
export function combineUncertainty(
  parts: UncertaintyPart[],
  cancelled: ("active-share" | "total-solids" | "density")[] = [],
): DoseUncertainty {
  const shared = parts.filter((part) => part.shared);
  return {
    total: quadrature(parts),
    perJar: quadrature(parts.filter((part) => !part.shared)),
    shared: quadrature(shared),
    sharedLeft: quadrature(shared.filter((part) => !(cancelled as string[]).includes(part.name))),
  };
}
