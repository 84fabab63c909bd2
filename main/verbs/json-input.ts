import type { z } from "zod";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { issueMessage } from "../../src/study/issue-words.ts";
import { readTextFile } from "./verb.ts";

/** Reads a JSON file and checks it against a schema; a fault names the file and the JSON path. */
export function readJsonFile<T>(path: string, schema: z.ZodType<T>): Outcome<T> {
  const text = readTextFile(path);
  if (!text.ok) return text;
  let value: unknown;
  try {
    value = JSON.parse(text.value.replace(/^\uFEFF/, ""));
  } catch (error) {
    const reason = error instanceof Error ? error.message : "unreadable";
    const position = /position (\d+)/.exec(reason)?.[1];
    const line = position === undefined ? null : text.value.slice(0, Number(position)).split("\n").length;
    return bad(`${path}: is not JSON${line === null ? "" : ` (line ${line})`}.`);
  }
  const parsed = schema.safeParse(value);
  if (parsed.success) return good(parsed.data);
  const [issue] = deepest(parsed.error.issues);
  const given = (issue?.path ?? []).reduce<unknown>(
    (inner, part) => (inner as Record<PropertyKey, unknown> | null | undefined)?.[part],
    value,
  );
  const place = (issue?.path ?? []).reduce<string>(
    (words, part) =>
      typeof part === "number"
        ? `${words}[${part}]`
        : words === ""
          ? String(part)
          : `${words}.${String(part)}`,
    "",
  );
  return bad(
    `${path}: ${place === "" ? "the whole" : place}: ${(issue ? issueMessage(issue, given) : "is not right").replace(/\.$/, "")}.`,
  );
}

// A union's own issue says nothing; the first branch's says what is wrong.
function deepest(issues: z.core.$ZodIssue[]): z.core.$ZodIssue[] {
  const [first] = issues;
  if (first?.code === "invalid_union" && first.errors[0]?.[0])
    return deepest(first.errors[0]).map(
      (issue) => ({ ...issue, path: [...first.path, ...issue.path] }) as z.core.$ZodIssue,
    );
  return issues;
}
