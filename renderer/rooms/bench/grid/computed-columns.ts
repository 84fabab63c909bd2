import type { JarChain } from "../../../../src/study/derive/jars.ts";
import type { useFormat } from "../../../stores/format.ts";

/** The polymer whose computed columns, its dose and that as supplied, stand behind a typed column. */
export const computedAfter = (key: string): "A" | "B" | null =>
  key === "syringeA" ? "A" : key === "syringeB" ? "B" : null;

/** A jar's dose as the product is supplied, as its cell tells it; "" where it cannot be had. */
export function suppliedText(
  jar: JarChain,
  letter: "A" | "B",
  format: Pick<ReturnType<typeof useFormat>, "shown">,
): string {
  const { value } = letter === "A" ? jar.suppliedA : jar.suppliedB;
  return value === null ? "" : format.shown(value, "asSuppliedKgPerT");
}
