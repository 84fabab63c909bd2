import { guessUses, holdsNumbers } from "../../../../src/exchange/columns.ts";
import { guessHeadLine, tableOf, type Grid } from "../../../../src/exchange/grid.ts";
import { readSheetFile, type SheetFile } from "../../../../src/exchange/sheet-file.ts";
import { bad, good, type Outcome } from "../../../../src/outcome.ts";
import { exportFile } from "../../../../src/study/exchange/export-file.ts";
import { planImport } from "../../../../src/study/exchange/import-plan.ts";
import { exchangeRoomWords as words } from "../../../../src/words/exchange-room.ts";
import { speakLanguage } from "../../../../src/words/speak-language.ts";
import { newId } from "../../../stores/ids.ts";
import { stateReceiver } from "../../../worker/send-state.ts";
import type { Question, QuestionName, Questions, ToWorker, WorkerAnswer, WorkStep } from "./messages.ts";

// Files are read, matched and written here, off the screen's thread, so that nothing stands still and a cancelled one
// can simply be ended. The file stays here between questions.
let file: SheetFile | null = null;
let fileName = "";
const study = stateReceiver();
type Told = (step: WorkStep["step"], done: number, total: number) => void;

type Answers = {
  [N in QuestionName]: (
    asked: Questions[N]["asked"],
    told: Told,
  ) => Promise<Outcome<Questions[N]["answered"]>> | Outcome<Questions[N]["answered"]>;
};

function sheetAt(index: number): Outcome<Grid> {
  const sheet = file?.sheets[index];
  return sheet ? good(sheet) : bad(words.chooseAgain);
}

const answers: Answers = {
  read: async ({ bytes, name }) => {
    const read = await readSheetFile(new Uint8Array(bytes), name);
    if (!read.ok) return read;
    file = read.value;
    fileName = name;
    return good({
      kind: file.kind,
      encoding: file.encoding,
      sheets: file.sheets.map((sheet) => ({
        name: sheet.sheet,
        rows: sheet.rows.length,
        headLine: guessHeadLine(sheet),
      })),
    });
  },
  table: ({ sheet, headLine }) => {
    const grid = sheetAt(sheet);
    if (!grid.ok) return grid;
    const table = tableOf(grid.value, fileName, null, headLine, () => false);
    if (!table.ok) return table;
    const { heads, rows, separator } = table.value;
    return good({
      heads,
      rows: rows.length,
      separator,
      guesses: guessUses(heads),
      examples: heads.map((_, column) =>
        rows
          .slice(0, 200)
          .flatMap(({ cells }) => (cells[column] ? [cells[column].slice(0, 40)] : []))
          .slice(0, 3),
      ),
    });
  },
  plan: ({ sheet, headLine, uses, mark, ...options }, told) => {
    const grid = sheetAt(sheet);
    if (!grid.ok) return grid;
    const table = tableOf(grid.value, fileName, mark, headLine, (column) => holdsNumbers(uses[column]));
    if (!table.ok) return table;
    const plan = planImport(study.state(), table.value, uses, { ...options, nextId: newId, told });
    return plan.ok ? good({ plan: plan.value, mark: table.value.mark, parts: [] }) : plan;
  },
  export: async ({ format, seriesId }, told) =>
    good({ bytes: await exportFile(study.state(), format, seriesId, told) }),
};

const commandsAtOnce = 200;

/** Sends the commands of a plan ahead as text in parts; what is left is small. */
function inParts(id: number, answered: Questions["plan"]["answered"]): Questions["plan"]["answered"] {
  const { command } = answered.plan;
  if (!command) return answered;
  for (let from = 0; from < command.commands.length; from += commandsAtOnce) {
    const part = JSON.stringify(command.commands.slice(from, from + commandsAtOnce));
    postMessage({ id, part } satisfies WorkerAnswer);
  }
  return { ...answered, plan: { ...answered.plan, command: { ...command, commands: [] } } };
}

/** Says now and then how far a question's work is: more often than that nobody can read it. */
function telling(id: number): Told {
  const everyMs = 100;
  let said = performance.now();
  return (step, done, total) => {
    if (performance.now() - said < everyMs) return;
    said = performance.now();
    postMessage({ id, at: { step, done, total } } satisfies WorkerAnswer);
  };
}

async function answer({ id, name, language, asked }: Question): Promise<void> {
  const work = answers[name] as (
    asked: Question["asked"],
    told: Told,
  ) => Promise<Outcome<Questions[QuestionName]["answered"]>> | Outcome<Questions[QuestionName]["answered"]>;
  let outcome: Outcome<Questions[QuestionName]["answered"]>;
  try {
    await speakLanguage(language);
    outcome = await work(asked, telling(id));
  } catch {
    outcome = bad(words.failed);
  }
  if (outcome.ok && "plan" in outcome.value) outcome = good(inParts(id, outcome.value));
  const answered: WorkerAnswer = outcome.ok
    ? { id, ok: true, value: outcome.value }
    : { id, ok: false, message: outcome.message };
  postMessage(answered, outcome.ok && "bytes" in outcome.value ? [outcome.value.bytes.buffer] : []);
}

// One after another: the parts of another study must not come in under a question that is being worked on.
let last: Promise<void> = Promise.resolve();
addEventListener("message", ({ data }: MessageEvent<ToWorker>) => {
  last = last.then(() => ("do" in data ? study.take(data) : answer(data)));
});
