import { shellWords } from "../src/words/shell.ts";
import type { Answer, CallName, InputOf, OutputOf } from "../src/contract.ts";

/** What the desktop window's preload exposes: exactly the contract's calls, nothing else. */
type Bridge = Record<CallName, (input: unknown, opening: string | null) => Promise<unknown>>;

declare global {
  interface Window {
    flocwright?: Bridge;
  }
}

let opening: string | null = null;

/** Ties this window's calls to the opening of a study that it shows; the host refuses them once another is open. */
export function bindTo(token: string | null): void {
  opening = token;
}

async function overHttp(name: string, body: BodyInit): Promise<unknown> {
  const response = await fetch(`/call/${name}`, {
    method: "POST",
    headers: {
      "content-type": "application/json",
      ...(opening === null ? {} : { "x-flocwright-opening": opening }),
    },
    body,
    // A draft is small and may be on its way while the window closes.
    keepalive: name.startsWith("draft."),
  });
  return response.json();
}

/**
 * Calls the service, over the desktop bridge where there is one, else over the loopback host.
 * Never throws: a host that does not answer is an answer of its own. `text` is the input as JSON where it was written
 * already, since writing a large one in one go would keep the screen still.
 */
export async function call<N extends CallName>(
  name: N,
  input: InputOf<N>,
  text?: Blob,
): Promise<Answer<OutputOf<N>>> {
  try {
    const answer = await (window.flocwright
      ? window.flocwright[name](input, opening)
      : overHttp(name, text ?? JSON.stringify(input)));
    return answer as Answer<OutputOf<N>>;
  } catch {
    return {
      ok: false,
      code: "failed",
      message: shellWords.noAnswer,
    };
  }
}
