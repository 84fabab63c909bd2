import { spokenLanguage } from "../../src/words/language.ts";
import type { FitAnswer, FitQuestion } from "./messages.ts";

let worker: Worker | null = null;
let lastId = 0;
const waiting = new Map<number, (answer: FitAnswer) => void>();

/** Has a series analysed off the screen's thread. Answers come in the order of the questions. */
export function askFits(question: Omit<FitQuestion, "id" | "language">): Promise<FitAnswer> {
  if (!worker) {
    worker = new Worker(new URL("./fits.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", (event: MessageEvent<FitAnswer>) => {
      waiting.get(event.data.id)?.(event.data);
      waiting.delete(event.data.id);
    });
  }
  lastId += 1;
  const id = lastId;
  worker.postMessage({ ...question, id, language: spokenLanguage() } satisfies FitQuestion);
  return new Promise((resolve) => waiting.set(id, resolve));
}
