import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";

const rules = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];

const colourRules = ["color-contrast", "link-in-text-block"];

/**
 * What axe holds against the page as it stands, one line for each element. The looks differ in colour alone, so one of
 * them is held against every rule and the others against the rules of colour.
 */
export async function axeFaults(
  page: Page,
  where: string,
  only: "all" | "colour" = "all",
): Promise<string[]> {
  const axe = new AxeBuilder({ page });
  const { violations } = await (only === "all" ? axe.withTags(rules) : axe.withRules(colourRules)).analyze();
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(
      (node) => `${where}: ${id}: ${node.target.join(" ")} ${node.failureSummary?.split("\n")[1] ?? ""}`,
    ),
  );
}

export const looks = {
  light: { colorScheme: "light", contrast: "no-preference" },
  dark: { colorScheme: "dark", contrast: "no-preference" },
  "high contrast": { colorScheme: "light", contrast: "more" },
} as const;
