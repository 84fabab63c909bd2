import { defineStore } from "pinia";
import { shallowRef } from "vue";
import { call } from "../client.ts";

export interface Draft {
  place: string;
  text: string;
  reason: string;
}

const waitMs = 300;

/** Typed text that is not (yet) accepted, kept by the host outside the history and offered again on reopening. */
export const useDrafts = defineStore("drafts", () => {
  const drafts = shallowRef<Record<string, Draft>>({});
  const timers = new Map<string, ReturnType<typeof setTimeout>>();

  async function load(): Promise<void> {
    const answer = await call("draft.list", {});
    if (!answer.ok) {
      drafts.value = {};
      return;
    }
    // What is on its way from this window is newer than what the host had.
    const mine = [...timers.keys()].flatMap((place) => drafts.value[place] ?? []);
    drafts.value = Object.fromEntries([...answer.value.drafts, ...mine].map((draft) => [draft.place, draft]));
  }

  /** Remembers text for a place; written soon after the last keystroke. */
  function keep(place: string, text: string, reason = "", after = waitMs): void {
    drafts.value = { ...drafts.value, [place]: { place, text, reason } };
    clearTimeout(timers.get(place));
    timers.set(
      place,
      setTimeout(() => void write(place), after),
    );
  }

  function write(place: string): Promise<unknown> {
    clearTimeout(timers.get(place));
    timers.delete(place);
    const draft = drafts.value[place];
    return draft
      ? call("draft.keep", { place, text: draft.text.slice(0, 2000), reason: draft.reason })
      : Promise.resolve();
  }

  /** Writes at once whatever was waiting for a pause in the typing: the window is about to go. */
  async function flush(): Promise<void> {
    await Promise.all([...timers.keys()].map(write));
  }

  /** Forgets the text of a place once it was accepted or given up. */
  function drop(place: string): void {
    clearTimeout(timers.get(place));
    timers.delete(place);
    if (!Object.hasOwn(drafts.value, place)) return;
    drafts.value = Object.fromEntries(Object.entries(drafts.value).filter(([key]) => key !== place));
    void call("draft.drop", { place });
  }

  return { drafts, load, keep, drop, flush };
});
