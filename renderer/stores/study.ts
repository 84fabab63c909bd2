import { shellWords } from "../../src/words/shell.ts";
import { defineStore } from "pinia";
import { computed, ref, shallowRef } from "vue";
import type { Acknowledged, Answer, Opened } from "../../src/contract.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { inSlices } from "../../src/steps.ts";
import { applyCommand, applyInSteps, type Command } from "../../src/study/commands.ts";
import type { Change } from "../../src/study/history.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { bindTo, call } from "../client.ts";
import { slicer } from "../worker/next-task.ts";
import { requestOf, writeLargeStep, type LargeCommand, type LargeStep, type LongRun } from "./long-step.ts";
import { afterLarge } from "./large-change.ts";
import { usePeople } from "./people.ts";
import { wholeStudy } from "./whole-study.ts";

export type SaveState = "saved" | "saving" | "not-saved";

interface Pending {
  command: Command;
  why: string;
  /** the state it was laid over on screen, and what came of it */
  base: StudyState;
  result: StudyState;
  /** a large step as JSON: the answer to it is then brief */
  large?: LargeStep;
  settle(outcome: Outcome<null>): void;
}

/**
 * The open study. Edits are checked and shown at once, sent one after another, and called saved only when the
 * service has answered that they are on disk; a refused edit is taken back and its sentence given to whoever asked.
 */
export const useStudy = defineStore("study", () => {
  const state = shallowRef<StudyState | null>(null);
  const fileName = ref("");
  const readOnlyBecause = ref<string | null>(null);
  /** whether the host has another study open by now, so that this window can only be loaded anew */
  const leftBehind = ref(false);
  const notices = ref<string[]>([]);
  const saveState = ref<SaveState>("saved");
  const savedAt = ref<string | null>(null);
  const undoNext = shallowRef<Change | null>(null);
  const redoNext = shallowRef<Change | null>(null);
  const trouble = ref<string | null>(null);
  /** entries in the history so far */
  const changes = ref(0);

  let durable: StudyState | null = null;
  let seq = 0;
  /** how often this window took a study in */
  let openings = 0;
  /** while another study is being taken in */
  let taking = false;
  let queue: Pending[] = [];
  let sending: Promise<void> | null = null;

  const isOpen = computed(() => state.value !== null);
  const study = computed(() => state.value?.study["study"] ?? null);

  /** Takes an opened study in, its large tables fetched first. False, with its sentence in `trouble`, where that fails. */
  async function accept(answered: Opened | null): Promise<boolean> {
    if (!answered) return false;
    openings += 1;
    taking = true;
    const whole = await wholeStudy(answered);
    taking = false;
    if (!whole.ok) {
      trouble.value = whole.message;
      // Calls are bound to the other study by now: what still stands here takes no edits.
      if (state.value) {
        readOnlyBecause.value = whole.message;
        leftBehind.value = true;
      }
      return false;
    }
    const opened = whole.value;
    openings += 1;
    durable = opened.state;
    state.value = opened.state;
    seq = opened.seq;
    changes.value = seq;
    fileName.value = opened.fileName;
    readOnlyBecause.value = opened.readOnlyBecause;
    leftBehind.value = false;
    notices.value = opened.notices;
    savedAt.value = opened.savedAt;
    undoNext.value = opened.undo;
    redoNext.value = opened.redo;
    saveState.value = "saved";
    trouble.value = null;
    return true;
  }

  // A large entry takes a while: whoever follows next waits, so that entries stay in their order.
  let following: Promise<void> = Promise.resolve();
  function follow(acknowledged: Omit<Acknowledged, "savedAt">, sent?: Pending): Promise<void> {
    following = following.catch(() => undefined).then(() => followNow(acknowledged, sent));
    return following;
  }

  async function followNow(acknowledged: Omit<Acknowledged, "savedAt">, sent?: Pending): Promise<void> {
    const shown = openings;
    for (const change of acknowledged.changes) {
      if (change.seq <= seq || !durable) continue;
      // Something came in between that this window has not seen: it is fetched in its order first.
      if (change.seq !== seq + 1) break;
      if (sent?.base === durable) {
        // What the screen already shows has become durable: the same state, so nothing is worked out twice.
        durable = sent.result;
      } else if (change.left) {
        const large = await afterLarge(durable, change);
        if (shown !== openings || !large.ok) return;
        await ready(large.value);
        if (shown !== openings) return;
        durable = large.value;
      } else {
        const applied = applyCommand(durable, change.command);
        if (applied.ok) durable = applied.value.state;
      }
      seq = change.seq;
    }
    changes.value = seq;
    undoNext.value = acknowledged.undo;
    redoNext.value = acknowledged.redo;
  }

  /** The durable state with every edit still on its way laid over it; an edit that no longer fits is refused. */
  function overlay(): void {
    let shown = durable;
    const kept: Pending[] = [];
    for (const pending of queue) {
      const applied = shown ? applyCommand(shown, pending.command) : bad(shellWords.noStudyOpen);
      if (applied.ok && shown) {
        const result: StudyState = applied.value.state;
        kept.push({ ...pending, base: shown, result });
        shown = result;
      } else if (!applied.ok) pending.settle(applied);
    }
    queue = kept;
    state.value = shown;
  }

  async function catchUp(): Promise<Outcome<null>> {
    if (taking) return good(null);
    const shown = openings;
    const since = await call("study.since", { afterSeq: seq });
    // The answer is about what stood here before a restore or another opening, which this window has taken in by now.
    if (shown !== openings) return good(null);
    // Another window closed this study or opened another: what stands here stays to be read, and takes no edits.
    if (!since.ok && since.code === "no-study") {
      readOnlyBecause.value = since.message;
      leftBehind.value = true;
    }
    if (!since.ok && since.code === "failed") trouble.value = since.message;
    if (!since.ok) return bad(since.message);
    if (queue.length === 0) trouble.value = null;
    if (since.value.changes.length > 0) {
      await follow(since.value);
      overlay();
    }
    return good(null);
  }

  function send({ command, why, large }: Pending, by: string): Promise<Answer<Acknowledged>> {
    const about = { afterSeq: seq, why, by };
    if (!large) return call("study.apply", { command, ...about });
    return call("study.apply", { command, ...about, brief: true }, requestOf(large, about));
  }

  /** A large step became durable just as it was sent, and the answer does not repeat it. */
  async function adopt(sent: Pending, answer: Acknowledged): Promise<void> {
    if (sent.base === durable && answer.seq === seq + 1) {
      durable = sent.result;
      ({ seq } = answer);
    }
    await follow({ ...answer, changes: [] });
    if (seq < answer.seq) void catchUp();
  }

  async function sendAll(): Promise<void> {
    const by = usePeople().current;
    while (queue.length > 0) {
      const [next] = queue;
      if (!next) break;
      saveState.value = "saving";
      const answer = await send(next, by);
      if (answer.ok) {
        queue.shift();
        await (next.large ? adopt(next, answer.value) : follow(answer.value, next));
        savedAt.value = answer.value.savedAt;
        if (queue.length === 0) state.value = durable;
        next.settle(good(null));
        trouble.value = null;
        continue;
      }
      if (answer.code === "stale" && (await catchUp()).ok) continue;
      if (answer.code === "failed") {
        trouble.value = answer.message;
        saveState.value = "not-saved";
        setTimeout(() => void drain(), 2000);
        return;
      }
      queue.shift();
      overlay();
      next.settle(bad(answer.message));
    }
    saveState.value = "saved";
  }

  function drain(): Promise<void> {
    sending ??= sendAll().finally(() => (sending = null));
    return sending;
  }

  /** Waits for every edit under way; false where one of them cannot be written at the moment. */
  async function settled(): Promise<boolean> {
    await drain();
    return queue.length === 0;
  }

  /** Applies an edit: shown at once, settled when it is durable or refused (with the sentence). */
  function run(asked: Command, why = ""): Promise<Outcome<null>> {
    if (!state.value) return Promise.resolve(bad(shellWords.noStudyOpen));
    if (readOnlyBecause.value) return Promise.resolve(bad(readOnlyBecause.value));
    if (taking) return Promise.resolve(bad(shellWords.noStudyOpen));
    // The very command that the service will read, so that what is shown here is what becomes durable there.
    const command = JSON.parse(JSON.stringify(asked)) as Command;
    const base = state.value;
    const applied = applyCommand(base, command);
    if (!applied.ok) return Promise.resolve(applied);
    const result = applied.value.state;
    state.value = result;
    saveState.value = "saving";
    return new Promise((settle) => {
      queue.push({ command, why, base, result, settle });
      void drain();
    });
  }

  /**
   * Applies a large step in slices, so that the screen goes on answering meanwhile; cancelled in between, nothing has
   * changed. Edits that come in meanwhile stay, and the step is laid over them.
   */
  async function runLong(asked: LargeCommand, told: LongRun): Promise<Outcome<null> | null> {
    const large = await writeLargeStep(asked, told);
    if (!large) return null;
    const { command } = large;
    for (;;) {
      const base = state.value;
      if (!base) return bad(shellWords.noStudyOpen);
      if (readOnlyBecause.value) return bad(readOnlyBecause.value);
      const applied = await inSlices(applyInSteps(base, command), slicer(), {
        step: (done) => told.step(done, command.commands.length),
        cancelled: told.cancelled,
      });
      if (!applied?.ok) return applied;
      const result = applied.value.state;
      if (!(await ready(result, told.cancelled))) return null;
      if (state.value !== base) continue;
      state.value = result;
      saveState.value = "saving";
      return new Promise((settle) => {
        queue.push({ command, why: "", base, result, large, settle });
        void drain();
      });
    }
  }

  /** what hangs on the state and takes long: gone through in slices before the outcome of a large step is shown */
  const readied: ((result: StudyState) => Generator<number, unknown>)[] = [];
  async function ready(result: StudyState, cancelled?: () => boolean): Promise<boolean> {
    for (const steps of readied)
      if ((await inSlices(steps(result), slicer(), { cancelled })) === null) return false;
    return true;
  }

  async function move(direction: "undo" | "redo"): Promise<Outcome<null>> {
    await drain();
    const looked = await catchUp();
    if (!looked.ok) return looked;
    const answer = await call(direction === "undo" ? "study.undo" : "study.redo", {
      by: usePeople().current,
    });
    if (!answer.ok) return bad(answer.message);
    await follow(answer.value);
    savedAt.value = answer.value.savedAt;
    if (seq < answer.value.seq) await catchUp();
    overlay();
    return good(null);
  }

  async function close(): Promise<void> {
    await drain();
    await call("study.close", {});
    // The start screen speaks of no study: its calls are nobody's window's.
    bindTo(null);
    state.value = null;
    durable = null;
  }

  return {
    state,
    study,
    isOpen,
    fileName,
    readOnlyBecause,
    leftBehind,
    notices,
    saveState,
    savedAt,
    undoNext,
    redoNext,
    trouble,
    changes,
    accept,
    run,
    runLong,
    makeReady: (steps: (result: StudyState) => Generator<number, unknown>) => void readied.push(steps),
    undo: () => move("undo"),
    redo: () => move("redo"),
    catchUp,
    settled,
    close,
  };
});
