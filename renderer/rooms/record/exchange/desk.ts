import { bad, good, type Outcome } from "../../../../src/outcome.ts";
import { exchangeRoomWords as words } from "../../../../src/words/exchange-room.ts";
import { spokenLanguage } from "../../../../src/words/language.ts";
import type { Kind, StudyState } from "../../../../src/study/schema/records.ts";
import { stateSender, type StateSender } from "../../../worker/send-state.ts";
import type { Question, QuestionName, Questions, WorkerAnswer, WorkStep } from "./messages.ts";

/** What goes with a question: what it needs of a study, and who is told how far the work is. */
export interface Along {
  study?: { state: StudyState; kinds: readonly Kind[] };
  told?: (step: WorkStep) => void;
}

/** The screen's end of the worker that reads and writes files. */
export interface Desk {
  ask<N extends QuestionName>(
    name: N,
    asked: Questions[N]["asked"],
    along?: Along,
  ): Promise<Outcome<Questions[N]["answered"]>>;
  /** ends whatever is being worked on; its questions are answered with a sentence */
  end(): void;
}

/** Opens a desk; its worker starts with the first question and is ended with `end`. */
export function openDesk(): Desk {
  let worker: Worker | null = null;
  let sender: StateSender | null = null;
  let lastId = 0;
  const waiting = new Map<number, (outcome: Outcome<never>) => void>();
  /** commands of plans that are still arriving */
  const parts = new Map<number, string[]>();
  const told = new Map<number, (step: WorkStep) => void>();

  function start(): Worker {
    const started = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    started.addEventListener("message", (event: MessageEvent<WorkerAnswer>) => {
      const answer = event.data;
      if ("at" in answer) return told.get(answer.id)?.(answer.at);
      if ("part" in answer) return void parts.set(answer.id, [...(parts.get(answer.id) ?? []), answer.part]);
      if (answer.ok && "plan" in answer.value) answer.value.parts = parts.get(answer.id) ?? [];
      parts.delete(answer.id);
      const settle = waiting.get(answer.id);
      waiting.delete(answer.id);
      told.delete(answer.id);
      settle?.((answer.ok ? good(answer.value) : bad(answer.message)) as Outcome<never>);
    });
    started.addEventListener("error", () => end(words.notWorkable));
    return started;
  }

  function end(sentence: string): void {
    worker?.terminate();
    worker = null;
    sender?.end();
    sender = null;
    told.clear();
    for (const settle of waiting.values()) settle(bad(sentence));
    waiting.clear();
    parts.clear();
  }

  return {
    ask(name, asked, along = {}) {
      worker ??= start();
      lastId += 1;
      const id = lastId;
      const question = { id, name, language: spokenLanguage(), asked } as Question;
      if (along.told) told.set(id, along.told);
      const answered = new Promise<Outcome<never>>((resolve) => waiting.set(id, resolve));
      // A file is handed over rather than copied.
      if (!along.study) worker.postMessage(question, question.name === "read" ? [question.asked.bytes] : []);
      else {
        sender ??= stateSender(worker);
        void sender.post(along.study.state, question, along.study.kinds);
      }
      return answered;
    },
    end: () => end(words.cancelled),
  };
}
