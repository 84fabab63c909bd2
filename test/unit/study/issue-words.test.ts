import { expect, test } from "vitest";
import { z } from "zod";
import { describeIssue } from "../../../src/study/issue-words.ts";

const schema = z.strictObject({ doseKgPerT: z.number("is not a number"), name: z.string() });
const words = (given: unknown) => {
  const parsed = schema.safeParse(given);
  return parsed.success ? "accepted" : describeIssue(parsed.error, "jar", given);
};

test("a refused record is told about in words for a person, never in the program's own", () => {
  expect(words({ doseKgPerT: 1 })).toBe("Name is missing.");
  expect(words({ doseKgPerT: 1, name: 7 })).toBe("Name is not a text (given: 7).");
  expect(words({ doseKgPerT: NaN, name: "a" })).toBe("Dose is not a number.");
  expect(words(null)).toBe("Jar is not a group of fields.");
  expect(words({ doseKgPerT: 1, name: "a", "two\nlines": 1 })).toBe("Jar has an unknown field two lines.");
  expect(words({ doseKgPerT: 1, name: "a", ["x".repeat(9000)]: 1 }).length).toBeLessThan(80);
  expect(words({ doseKgPerT: "\ud800", name: "a" })).toBe("Dose is not a number (given: \ufffd).");
});
