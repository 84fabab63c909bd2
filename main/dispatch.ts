import { contract, type Answer, type CallName } from "../src/contract.ts";
import { describeIssue } from "../src/study/issue-words.ts";
import { handlers, type Context } from "./service.ts";
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
  let last: Promise<unknown> = Promise.resolve();
  return (name, input, opening) => {
    const answer = last.then(() => answerCall(context, name, input, opening));
    last = answer.catch(() => undefined);
    return answer;
  };
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
  const parsed = call.input.safeParse(input);
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
