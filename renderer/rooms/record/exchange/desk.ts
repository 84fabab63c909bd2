import type { SimpleCommand } from "../../../../src/study/commands.ts";
import { bad, good, type Outcome } from "../../../../src/outcome.ts";
import { exchangeRoomWords as words } from "../../../../src/words/exchange-room.ts";
import { spokenLanguage } from "../../../../src/words/language.ts";
import type { Question, QuestionName, Questions, WorkerAnswer } from "./messages.ts";

/** The screen's end of the worker that reads and writes files. */
export interface Desk {
  ask<N extends QuestionName>(
    name: N,
    asked: Questions[N]["asked"],
  ): Promise<Outcome<Questions[N]["answered"]>>;
  /** ends whatever is being worked on; its questions are answered with a sentence */
  end(): void;
}

/** Opens a desk; its worker starts with the first question and is ended with `end`. */
export function openDesk(): Desk {
  let worker: Worker | null = null;
  let lastId = 0;
  const waiting = new Map<number, (outcome: Outcome<never>) => void>();
  /** commands of plans that are still arriving */
  const parts = new Map<number, SimpleCommand[][]>();

  function start(): Worker {
    const started = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    started.addEventListener("message", (event: MessageEvent<WorkerAnswer>) => {
      const answer = event.data;
      if ("parts" in answer)
        return void parts.set(answer.id, [...(parts.get(answer.id) ?? []), answer.parts]);
      if (answer.ok && "plan" in answer.value && parts.has(answer.id)) {
        const { command } = answer.value.plan;
        if (command?.do === "together") command.commands = (parts.get(answer.id) ?? []).flat();
        parts.delete(answer.id);
      }
      const settle = waiting.get(answer.id);
      waiting.delete(answer.id);
      settle?.((answer.ok ? good(answer.value) : bad(answer.message)) as Outcome<never>);
    });
    started.addEventListener("error", () => end(words.notWorkable));
    return started;
  }

  function end(sentence: string): void {
    worker?.terminate();
    worker = null;
    for (const settle of waiting.values()) settle(bad(sentence));
    waiting.clear();
    parts.clear();
  }

  return {
    ask(name, asked) {
      worker ??= start();
      lastId += 1;
      const id = lastId;
      const question = { id, name, language: spokenLanguage(), asked } as Question;
      worker.postMessage(question);
      return new Promise((resolve) => waiting.set(id, resolve as (outcome: Outcome<never>) => void));
    },
    end: () => end(words.cancelled),
  };
}
