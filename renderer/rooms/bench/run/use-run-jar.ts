import { computed, nextTick, onMounted, ref, type Ref } from "vue";
import { kindNamed } from "../../../../src/responses/registry.ts";
import { stepAfter, type RunStep } from "../../../../src/bench/run-steps.ts";
import type { SeriesChain } from "../../../../src/study/derive/jars.ts";
import { parseNumber, writeNumber } from "../../../../src/units/number-entry.ts";
import { benchRunWords } from "../../../../src/words/bench-run.ts";
import { useDrafts } from "../../../stores/drafts.ts";
import { useEdit } from "../../../stores/edit.ts";
import { useRun } from "../../../stores/run.ts";
import { leftOutReasons } from "../left-out.ts";
import { useTable } from "../use-table.ts";
import { drainedAt, fieldFor, mixedFor, poursOf } from "./run-field.ts";
import { nextOpen, openStepOf, passSteps, runOrder, stepDone, type Pass } from "./run-jars.ts";
import { signal } from "./sound.ts";
import { useTimer } from "./use-timer.ts";

/** What the field component lends to the keys. */
export interface FieldHandle {
  focus(): void;
  put(text: string): void;
  leave(): Promise<boolean>;
  giveUp(): void;
  text: string;
  dirty: boolean;
}

const words = benchRunWords.said;
const bounceS = 0.5;

/** The running of one jar after another: where it stands, the number it asks for, and what each key does. */
export function useRunJar(chain: () => SeriesChain, field: Ref<FieldHandle | null>) {
  const run = useRun();
  const edit = useEdit();
  const drafts = useDrafts();
  const { context, columns } = useTable(chain);

  const pass = computed<Pass>(() => run.position.pass);
  const order = computed(() => runOrder(chain()));
  const jar = computed(() => order.value.find((one) => one.jar.id === run.position.jarId) ?? null);
  const steps = computed<RunStep[]>(() => (jar.value ? passSteps(chain(), jar.value, pass.value) : []));
  const index = computed(() => Math.min(run.position.step, steps.value.length - 1));
  const step = computed<RunStep | null>(() => steps.value[index.value] ?? null);

  const rereading = ref("");
  const again = computed(() => {
    const one = step.value;
    if (!jar.value || one?.kind !== "read") return false;
    const place = `jar ${jar.value.jar.id} ${one.reading} again`;
    // Text of a re-read that was being typed when the window closed brings the re-read back.
    return rereading.value === `${jar.value.jar.id} ${index.value}` || drafts.drafts[place] !== undefined;
  });
  const spec = computed(() =>
    jar.value && step.value
      ? fieldFor(step.value, context.value, columns.value, jar.value, {
          again: again.value,
          laps: run.position.laps,
          running: run.position.startedAt !== null,
        })
      : null,
  );

  const plannedS = computed(() =>
    step.value?.kind === "mix" || step.value?.kind === "drain" ? step.value.seconds : null,
  );
  const { elapsedS, up } = useTimer(
    () => run.position.startedAt,
    () => plannedS.value,
  );

  const leaving = ref(false);
  const said = ref("");

  function go(jarId: string | null, to: number, startTimer = false): void {
    rereading.value = "";
    leaving.value = false;
    run.move({
      jarId,
      step: to,
      laps: [],
      startedAt: startTimer ? new Date().toISOString() : null,
    });
  }

  function toNextJar(): void {
    const next = nextOpen(chain(), pass.value, run.position.jarId);
    if (next) go(next.jarId, next.step);
    else go(null, 0);
  }

  function advance(): void {
    const here = jar.value;
    if (!here) return;
    const next = stepAfter(steps.value, index.value, (one) => stepDone(here, one));
    if (next === null) return toNextJar();
    go(here.jar.id, next, steps.value[next]!.kind === "mix");
  }

  function toPass(to: Pass): void {
    run.move({ pass: to, jarId: null });
    const next = nextOpen(chain(), to, null);
    if (next) go(next.jarId, next.step);
  }

  onMounted(() => {
    if (run.position.jarId === null || !jar.value) {
      const next = nextOpen(chain(), pass.value, null);
      if (next) go(next.jarId, next.step);
    }
  });

  const round = (seconds: number) => Math.round(seconds * 10) / 10;

  async function accept(): Promise<void> {
    const here = jar.value;
    const one = step.value;
    said.value = "";
    if (!here || !one) return;
    // What the number on the screen was for: once it is accepted another one is asked for.
    const asked = spec.value?.key ?? "";
    const drainsStill = one.kind === "drain" && run.position.startedAt !== null && !up.value;
    if (drainsStill && !asked.includes(" lap ") && !stepDone(here, one)) {
      said.value = field.value?.dirty ? words.notUp : words.draining;
      return;
    }
    if (field.value && !(await field.value.leave())) return;
    switch (one.kind) {
      case "inject":
        if (here.jar.mixedAt === null && one.letter === steps.value.find((s) => s.kind === "inject")?.letter)
          await edit.set("jar", here.jar.id, { mixedAt: new Date().toISOString() });
        return advance();
      case "mix":
        if (run.position.startedAt === null) return run.move({ startedAt: new Date().toISOString() });
        // A second press right after the first is a bounce of the key, not the end of mixing.
        if ((elapsedS.value ?? 0) < bounceS) return;
        if (here.jar.mixedAt === null)
          await edit.set("jar", here.jar.id, { mixedAt: run.position.startedAt });
        await edit.run(
          mixedFor(jar.value ?? here, one.pace, one.rpm, Math.max(0.1, round(elapsedS.value ?? 0))),
        );
        return advance();
      case "pour":
        if ((here.jar.asMixed?.pours ?? null) === null) await edit.run(poursOf(here, one.pours));
        return advance();
      case "drain":
        return acceptDrain(asked);
      default:
        return advance();
    }
  }

  function acceptDrain(asked: string): void {
    const { startedAt, laps } = run.position;
    const here = jar.value;
    if (!here) return;
    const done = stepDone(here, { kind: "drain", seconds: 0 });
    if (startedAt === null && !done) return run.move({ startedAt: new Date().toISOString() });
    // A lap that was asked for is answered now, with a volume or with nothing.
    const left = laps.filter((lap) => `${here.jar.id} lap ${lap.atS}` !== asked);
    const waiting = left.some(({ ml }) => ml === null);
    if (waiting && done) return run.move({ laps: left });
    advance();
  }

  async function plus(): Promise<void> {
    const here = jar.value;
    const one = step.value;
    if (!here || !one) return;
    if (one.kind === "drain" && run.position.startedAt !== null && elapsedS.value !== null) {
      const atS = Math.max(0.1, round(elapsedS.value));
      const typed = field.value?.dirty ? parseNumber(field.value.text, context.value.mark) : null;
      signal("lap");
      if (typed?.ok) {
        const text = field.value?.text ?? "";
        field.value?.giveUp();
        await edit.run(drainedAt(context.value, here, typed.value, atS));
        said.value = words.lapKept(text, writeNumber(atS, context.value.mark));
      } else {
        run.move({ laps: [...run.position.laps, { atS, ml: null }] });
        said.value = words.lapMarked(writeNumber(atS, context.value.mark));
      }
      return;
    }
    if (spec.value?.censorable && field.value) {
      const range = chain().series.turbidityRange;
      const text = field.value.dirty ? field.value.text.replace(/^[<>]/, "") : "";
      if (text === "" && (one.kind !== "read" || one.reading !== "turbidity" || range === null)) {
        said.value = words.typeEnd;
        return;
      }
      field.value.put(`>${text === "" ? String(range!.high).replace(".", context.value.mark) : text}`);
      await accept();
      return;
    }
    said.value = words.lapKey;
  }

  function back(): void {
    said.value = "";
    if (leaving.value) {
      leaving.value = false;
      return;
    }
    if (again.value) {
      field.value?.giveUp();
      rereading.value = "";
      return;
    }
    const here = jar.value;
    if (!here) {
      const last = order.value.at(-1);
      if (last) go(last.jar.id, Math.max(0, passSteps(chain(), last, pass.value).length - 1));
      return;
    }
    if (index.value > 0) return go(here.jar.id, index.value - 1);
    const before = order.value[order.value.indexOf(here) - 1];
    if (before) go(before.jar.id, Math.max(0, passSteps(chain(), before, pass.value).length - 1));
  }

  async function reread(): Promise<void> {
    const one = step.value;
    const here = jar.value;
    if (!here || one?.kind !== "read" || pass.value === "dry" || spec.value === null) {
      said.value = words.rereadKey;
      return;
    }
    if (kindNamed(one.reading)?.run?.later !== undefined) {
      said.value = words.dish;
      return;
    }
    if (field.value && !(await field.value.leave())) return;
    await nextTick();
    if (!stepDone(jar.value!, one)) {
      said.value = words.nothingToReread;
      return;
    }
    rereading.value = `${here.jar.id} ${index.value}`;
  }

  /** Leaves the jar out for a numbered reason, or with 0 uses it again. */
  async function leaveOut(number: number): Promise<void> {
    const here = jar.value;
    const reason = leftOutReasons[number - 1];
    if (!here || (number !== 0 && !reason)) return;
    await edit.set("jar", here.jar.id, {
      leftOut: reason ? { reason: reason.value as never, note: "" } : null,
    });
    leaving.value = false;
    if (reason) toNextJar();
    else {
      const open = openStepOf(chain(), here, pass.value);
      if (open !== null) go(here.jar.id, open);
    }
  }

  return {
    run,
    order,
    jar,
    steps,
    index,
    step,
    spec,
    again,
    pass,
    elapsedS,
    plannedS,
    up,
    leaving,
    said,
    go,
    toPass,
    accept,
    plus,
    back,
    reread,
    leaveOut,
  };
}
