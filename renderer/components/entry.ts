import { shellWords } from "../../src/words/shell.ts";
import { computed, ref, watch } from "vue";
import type { Outcome } from "../../src/outcome.ts";
import { useDrafts } from "../stores/drafts.ts";

export interface EntryOptions<T> {
  /** the cell's name in the study, for its draft: for example "jar j1 turbidity" */
  place(): string;
  /** the accepted value as text */
  stored(): string;
  parse(text: string): Outcome<T>;
  commit(value: T): Promise<Outcome<unknown>>;
}

/**
 * The one way text becomes a value: committed on leaving the cell or Enter, Escape brings back the accepted value,
 * refused text stays with its reason and is kept as a draft.
 */
export function useEntry<T>(options: EntryOptions<T>) {
  const drafts = useDrafts();
  // Text that was accepted just before the program died is no draft any more.
  const kept = drafts.drafts[options.place()];
  const waiting = kept && kept.text !== options.stored() ? kept : undefined;
  if (kept && !waiting) drafts.drop(options.place());
  const text = ref(waiting?.text ?? options.stored());
  const reason = ref(waiting ? waiting.reason || shellWords.entry.notAcceptedYet : "");
  const dirty = ref(waiting !== undefined);
  /** how often it was refused: the same reason twice is said twice */
  const tries = ref(0);

  watch(options.stored, (stored) => {
    if (!dirty.value) text.value = stored;
  });

  function typed(): void {
    dirty.value = text.value !== options.stored();
    // The reason of a refusal stays until the text is tried again: nothing moves while somebody types.
    if (dirty.value) drafts.keep(options.place(), text.value);
    else giveUp();
  }

  function refuse(message: string): false {
    reason.value = message;
    tries.value += 1;
    // Nobody is typing any more, so there is no pause to wait for: refused text is kept at once.
    drafts.keep(options.place(), text.value, message, 0);
    return false;
  }

  let leaving: { text: string; done: Promise<boolean> } | null = null;

  /**
   * Commits what stands in the cell; true where it was accepted (or nothing had changed). Enter and the loss of focus
   * that follows it are one leaving: what adds a record must not add it twice.
   */
  function leave(): Promise<boolean> {
    if (leaving && leaving.text === text.value) return leaving.done;
    const mine = { text: text.value, done: commitText() };
    leaving = mine;
    void mine.done.finally(() => {
      if (leaving === mine) leaving = null;
    });
    return mine.done;
  }

  async function commitText(): Promise<boolean> {
    if (!dirty.value) return true;
    if (text.value === options.stored()) {
      giveUp();
      return true;
    }
    const parsed = options.parse(text.value);
    if (!parsed.ok) return refuse(parsed.message);
    const sent = text.value;
    const outcome = await options.commit(parsed.value);
    if (!outcome.ok) return refuse(outcome.message);
    if (text.value === sent) {
      giveUp();
      return true;
    }
    return false;
  }

  /** Back to the accepted value. */
  function giveUp(): void {
    dirty.value = false;
    reason.value = "";
    text.value = options.stored();
    drafts.drop(options.place());
  }

  return { text, reason, tries, dirty: computed(() => dirty.value), typed, leave, giveUp };
}
