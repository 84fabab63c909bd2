import { spokenLanguage } from "../../src/words/language.ts";
import type { FitAnswer, FitPart, FitQuestion } from "./messages.ts";
import { slicer } from "./next-task.ts";
import type { Question } from "./question.ts";

let worker: Worker | null = null;
let lastId = 0;
const waiting = new Map<number, (answer: FitAnswer) => void>();

// More rows than these handed over at once would keep the screen still.
const rowsAtOnce = 1000;

/** Has a series analysed off the screen's thread. */
export function askFits(question: Question): Promise<FitAnswer> {
  if (!worker) {
    worker = new Worker(new URL("./fits.ts", import.meta.url), { type: "module" });
    worker.addEventListener("message", (event: MessageEvent<FitAnswer>) => {
      waiting.get(event.data.id)?.(event.data);
      waiting.delete(event.data.id);
    });
  }
  lastId += 1;
  const id = lastId;
  const answer = new Promise<FitAnswer>((resolve) => waiting.set(id, resolve));
  void send(worker, { ...question, id, language: spokenLanguage() });
  return answer;
}

async function send(to: Worker, question: FitQuestion): Promise<void> {
  const { id, rows, labels } = question;
  const rest = slicer();
  let from = 0;
  for (; from + rowsAtOnce < rows.length; from += rowsAtOnce) {
    const until = from + rowsAtOnce;
    const part: FitPart = {
      id,
      more: true,
      rows: rows.slice(from, until),
      labels: labels.slice(from, until),
    };
    to.postMessage(part);
    await rest();
  }
  to.postMessage({ ...question, rows: rows.slice(from), labels: labels.slice(from) });
}
