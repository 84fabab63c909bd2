import { contract, type Answer, type CallName } from "../src/contract.ts";
import { describeIssue } from "../src/study/issue-words.ts";
import { handlers, type Context } from "./service.ts";

/**
 * Answers one call: input parsed by the contract, handled, output parsed again. Whatever goes wrong is one sentence;
 * no stack and no path of the machine crosses the boundary. Calls are answered one after another, in order.
 */
export function createDispatcher(
  context: Context,
): (name: string, input: unknown) => Promise<Answer<unknown>> {
  let last: Promise<unknown> = Promise.resolve();
  return (name, input) => {
    const answer = last.then(() => answerCall(context, name, input));
    last = answer.catch(() => undefined);
    return answer;
  };
}

async function answerCall(context: Context, name: string, input: unknown): Promise<Answer<unknown>> {
  if (!Object.hasOwn(contract, name))
    return { ok: false, code: "bad-input", message: "There is no such call." };
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
      message: "Flocwright answered something it should not have; nothing was changed by that.",
    };
  } catch {
    return {
      ok: false,
      code: "failed",
      message: "Something in Flocwright itself failed. What was saved before is safe.",
    };
  }
}
