import { computed, onScopeDispose, ref, shallowRef, toRaw, watch } from "vue";
import type { ColumnUse } from "../../../../src/exchange/columns.ts";
import { limits } from "../../../../src/exchange/limits.ts";
import type { SimpleCommand } from "../../../../src/study/commands.ts";
import type { DecimalMark } from "../../../../src/units/number-entry.ts";
import { kindsToPlan, type ImportPlan } from "../../../../src/study/exchange/import-plan.ts";
import type { NewSeriesChoice } from "../../../../src/study/exchange/series-targets.ts";
import { exchangeRoomWords as words } from "../../../../src/words/exchange-room.ts";
import { useSelection } from "../../../stores/selection.ts";
import { useStudy } from "../../../stores/study.ts";
import { slicer } from "../../../worker/next-task.ts";
import { openDesk } from "./desk.ts";
import type { FoundFile, FoundTable, WorkStep } from "./messages.ts";

/** Added to a study: what the last import did, for the words that say so. */
export interface Added {
  jars: number;
  readings: number;
  series: string;
}

/** The steps of an import where something can be mended. */
export type ImportPlace = "file" | "columns" | "series";

/** The steps of an import, from a file to one command of the study. Nothing is changed before `add`. */
export function useImport() {
  const study = useStudy();
  const selection = useSelection();
  const desk = openDesk();
  onScopeDispose(() => desk.end());

  const fileName = ref("");
  const busy = ref("");
  /** how far the reading of the rows is, where it takes long enough to be told */
  const reading = shallowRef<WorkStep | null>(null);
  const trouble = ref("");
  const found = shallowRef<FoundFile | null>(null);
  const table = shallowRef<FoundTable | null>(null);
  const sheet = ref(0);
  const headLine = ref(1);
  /** null: as the file's own numbers say */
  const mark = ref<DecimalMark | null>(null);
  const markRead = ref<DecimalMark | null>(null);
  const uses = shallowRef<ColumnUse[]>([]);
  /** a series of the study by its name, or "" for a new one */
  const intoSeries = ref("");
  const newName = ref("");
  const choice = ref<NewSeriesChoice>({});
  const skipBad = ref(false);
  const readAgain = ref(false);
  const plan = shallowRef<ImportPlan | null>(null);
  /** what keeps the rows from being read, in one sentence that says what to do */
  const open = ref("");
  const added = ref<Added | null>(null);
  // An answer to a question that has been asked anew since is let go; a new file lets go of both kinds.
  let turn = 0;
  let planTurn = 0;

  const hasSeriesColumn = computed(() =>
    uses.value.some((use) => use.as === "field" && use.field === "series"),
  );
  const dosesB = computed(() =>
    uses.value.some(
      (use) =>
        (use.as === "dose" && use.polymer === "b") ||
        (use.as === "field" && use.field === "planned_dose_b_kg_per_t"),
    ),
  );
  /** what a new series is set up with: as chosen, else as the series the window is about */
  const setUp = computed(() => {
    const pattern = selection.series;
    const samples = Object.keys(study.state?.sample ?? {});
    const stocks = Object.keys(study.state?.stock ?? {});
    const only = (ids: string[]) => (ids.length === 1 ? ids[0]! : null);
    const chosen = choice.value;
    return {
      sampleId: chosen.sampleId ?? selection.sampleId ?? only(samples),
      stockAId: chosen.stockAId !== undefined ? chosen.stockAId : (pattern?.stockAId ?? only(stocks)),
      stockBId:
        chosen.stockBId !== undefined ? chosen.stockBId : dosesB.value ? (pattern?.stockBId ?? null) : null,
      sampleVolumeMl: chosen.sampleVolumeMl ?? pattern?.sampleVolumeMl ?? null,
    };
  });
  const plainName = computed(
    () => fileName.value.replace(/\.[^.]*$/, "").slice(0, 120) || words.fallbackName,
  );

  function clear(): void {
    turn += 1;
    planTurn += 1;
    found.value = null;
    table.value = null;
    plan.value = null;
    open.value = "";
    trouble.value = "";
    uses.value = [];
    skipBad.value = false;
    readAgain.value = false;
    mark.value = null;
    markRead.value = null;
  }

  function cancel(): void {
    const midway = busy.value !== "";
    desk.end();
    clear();
    stopped.value = midway ? words.notAdded : "";
    busy.value = "";
    reading.value = null;
    fileName.value = "";
  }

  // Sentences from the domain begin with the file's name, which the screen shows once above.
  const short = (message: string) => {
    const rest = message.startsWith(`${fileName.value}: `)
      ? message.slice(fileName.value.length + 2)
      : message;
    return rest.charAt(0).toUpperCase() + rest.slice(1);
  };

  async function choose(file: File): Promise<void> {
    clear();
    stopped.value = "";
    added.value = null;
    fileName.value = file.name;
    newName.value = plainName.value;
    choice.value = {};
    if (file.size > limits.fileBytes) {
      trouble.value = words.tooLarge(limits.fileBytes / 1024 / 1024);
      return;
    }
    const mine = ++turn;
    busy.value = words.readingFile;
    const bytes = await file.arrayBuffer().catch(() => null);
    if (mine !== turn) return;
    if (bytes === null) {
      busy.value = "";
      trouble.value = words.notReadable;
      return;
    }
    const read = await desk.ask("read", { bytes, name: file.name });
    if (mine !== turn) return;
    busy.value = "";
    if (!read.ok) return void (trouble.value = short(read.message));
    found.value = read.value;
    sheet.value = 0;
    headLine.value = read.value.sheets[0]?.headLine ?? 1;
    await look();
  }

  /** Reads the heads of the chosen sheet and guesses what its columns are. */
  async function look(): Promise<void> {
    const mine = ++turn;
    plan.value = null;
    table.value = null;
    const answer = await desk.ask("table", { sheet: sheet.value, headLine: headLine.value });
    if (mine !== turn) return;
    trouble.value = answer.ok ? "" : short(answer.message);
    if (!answer.ok) return;
    table.value = answer.value;
    uses.value = answer.value.guesses;
  }

  async function replan(): Promise<void> {
    const { state } = study;
    if (!table.value || !state) return;
    const mine = ++planTurn;
    busy.value = words.readingRows;
    reading.value = null;
    const intoThere = hasSeriesColumn.value || intoSeries.value !== "";
    const answer = await desk.ask(
      "plan",
      {
        sheet: sheet.value,
        headLine: headLine.value,
        uses: uses.value,
        mark: mark.value,
        seriesName: hasSeriesColumn.value ? null : intoSeries.value || null,
        fallbackName: newName.value.trim() || plainName.value,
        choice: hasSeriesColumn.value ? {} : setUp.value,
        skipBad: skipBad.value,
        readAgain: readAgain.value && intoThere,
      },
      {
        study: { state: toRaw(state), kinds: kindsToPlan(intoThere) },
        told: (step) => mine === planTurn && (reading.value = step),
      },
    );
    if (mine !== planTurn) return;
    busy.value = "";
    reading.value = null;
    plan.value = answer.ok ? answer.value.plan : null;
    parts = answer.ok ? answer.value.parts : [];
    markRead.value = answer.ok ? answer.value.mark : null;
    open.value = answer.ok ? "" : short(answer.message);
  }

  let waiting: ReturnType<typeof setTimeout> | undefined;
  watch(
    [table, uses, mark, intoSeries, newName, setUp, skipBad, readAgain, () => study.state],
    () => {
      clearTimeout(waiting);
      // A short rest, so that typing a name does not read the file at each letter.
      waiting = setTimeout(() => void replan(), 150);
    },
    { deep: false },
  );
  onScopeDispose(() => clearTimeout(waiting));

  function setUse(column: number, use: ColumnUse): void {
    uses.value = uses.value.map((before, index) => (index === column ? use : before));
  }

  const setInto = (name: string) => void (intoSeries.value = name);
  const setName = (name: string) => void (newName.value = name);
  const setSkipBad = (skip: boolean) => void (skipBad.value = skip);
  const setReadAgain = (again: boolean) => void (readAgain.value = again);
  const setChoice = (fields: NewSeriesChoice) => void (choice.value = { ...choice.value, ...fields });

  /** how far the adding is; null while none is under way */
  const adding = shallowRef<{ done: number; total: number; written: boolean } | null>(null);
  let leaveOff = false;
  /** the commands of the plan, lists of them as JSON */
  let parts: string[] = [];

  /** The plan's commands, made of their text a part at a time; null where it was cancelled meanwhile. */
  async function commandsOf(texts: string[]): Promise<SimpleCommand[] | null> {
    const rest = slicer();
    const commands: SimpleCommand[] = [];
    for (const text of texts) {
      commands.push(...(JSON.parse(text) as SimpleCommand[]));
      await rest();
      if (leaveOff) return null;
    }
    return commands;
  }

  async function add(): Promise<void> {
    const { value } = plan;
    if (!value?.command || adding.value) return;
    leaveOff = false;
    adding.value = { done: 0, total: value.added, written: false };
    const { label } = value.command;
    const commands = await commandsOf(parts);
    const outcome =
      commands &&
      (await study.runLong(
        { do: "together", label, commands },
        {
          step: (done, total) => (adding.value = { done, total, written: done === total }),
          cancelled: () => leaveOff,
        },
      ));
    adding.value = null;
    if (!outcome) return void (stopped.value = words.notAdded);
    if (!outcome.ok) return void (trouble.value = outcome.message);
    const names = [...value.counts.newSeries, ...value.counts.intoSeries];
    clear();
    added.value = { jars: value.counts.jars, readings: value.counts.readings, series: names.join(", ") };
    fileName.value = "";
    newest = names[0];
  }

  // The new series becomes the one looked at when somebody goes there: a large one takes a moment to be worked out.
  let newest: string | undefined;
  function chooseAdded(): void {
    const series = Object.values(study.state?.series ?? {}).find(({ label }) => label === newest);
    if (series) selection.choose(series.id);
  }

  const stopped = ref("");
  const stopAdding = () => void (leaveOff = true);

  return {
    fileName,
    busy,
    reading,
    trouble,
    found,
    table,
    sheet,
    headLine,
    mark,
    markRead,
    uses,
    hasSeriesColumn,
    dosesB,
    intoSeries,
    newName,
    setUp,
    skipBad,
    readAgain,
    plan,
    open,
    added,
    choose,
    look,
    setUse,
    setInto,
    setName,
    setSkipBad,
    setReadAgain,
    setChoice,
    add,
    adding,
    stopped,
    stopAdding,
    chooseAdded,
    cancel,
  };
}
export type ImportWork = ReturnType<typeof useImport>;
