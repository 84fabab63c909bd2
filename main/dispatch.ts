import type { z } from "zod";
import { contract, type Answer, type CallName } from "../src/contract.ts";
import { describeIssue } from "../src/study/issue-words.ts";
import { parseInSteps } from "../src/study/command-parts.ts";
import { inSlices } from "../src/steps.ts";
import { handlers, inTurn, type Context } from "./service.ts";
import { giveWay, nextTask } from "./service/in-slices.ts";
import { serviceWords } from "../src/words/service.ts";

/** Calls that do not speak of the study a window shows: they may be made whatever is open. */
const unbound: ReadonlySet<string> = new Set<CallName>([
  "host.about",
  "host.speak",
  "shelf.list",
  "recent.list",
  "recent.forget",
  "study.create",
  "study.createDemo",
  "study.open",
  "study.choose",
  "study.current",
]);

/**
 * Answers one call: input parsed by the contract, handled, output parsed again. Whatever goes wrong is one sentence;
 * no stack and no path of the machine crosses the boundary. Calls are answered one after another, in order.
 * `opening` is the token of the opening that the calling window shows: where another one is open by now, a call that
 * speaks of the study is refused, so that no window edits a study it does not show.
 */
export function createDispatcher(
  context: Context,
): (name: string, input: unknown, opening?: unknown) => Promise<Answer<unknown>> {
  return (name, input, opening) => inTurn(context, () => answerCall(context, name, input, opening));
}

/** A call's input by the contract; that of a large step in slices, the first of them after what waits already. */
async function parsedInput(name: CallName, input: unknown): Promise<z.ZodSafeParseResult<unknown>> {
  const schema: z.ZodType<unknown> = contract[name].input;
  const steps = parseInSteps(schema, input, ["command"]);
  const first = steps.next();
  if (first.done) return first.value;
  await nextTask();
  return inSlices(steps, giveWay());
}

async function answerCall(
  context: Context,
  name: string,
  input: unknown,
  opening: unknown,
): Promise<Answer<unknown>> {
  if (!Object.hasOwn(contract, name))
    return { ok: false, code: "bad-input", message: serviceWords.noSuchCall };
  if (opening != null && !unbound.has(name) && context.open?.opening !== opening)
    return {
      ok: false,
      code: "no-study",
      message: serviceWords.otherStudy,
    };
  const call = contract[name as CallName];
  const parsed = await parsedInput(name as CallName, input);
  if (!parsed.success)
    return { ok: false, code: "bad-input", message: describeIssue(parsed.error, "request", input) };
  try {
    const handler = handlers[name as CallName] as (
      context: Context,
      input: unknown,
    ) => Promise<Answer<unknown>> | Answer<unknown>;
    const answer = await handler(context, parsed.data);
    if (!answer.ok) return answer;
    const checked = call.output.safeParse(answer.value);
    if (checked.success) return { ok: true, value: checked.data };
    return {
      ok: false,
      code: "failed",
      message: serviceWords.badAnswer,
    };
  } catch {
    return {
      ok: false,
      code: "failed",
      message: serviceWords.failed,
    };
  }
}
