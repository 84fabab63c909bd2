import { toRaw } from "vue";
import type { Paper } from "../../src/report/paper.ts";
import type { PaperInput } from "../../src/report/paper-input.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { paperRoomWords as words } from "../../src/words/paper-room.ts";
import { spokenLanguage } from "../../src/words/language.ts";
import { stateSender, type StateSender } from "../worker/send-state.ts";
import type { ReportAnswer, ReportQuestion } from "./report-messages.ts";

/** The screen's end of the worker that makes reports. */
export interface ReportDesk {
  /** Makes a report; `fitting` is told which series is being fitted, of how many. Null where it was overtaken or ended. */
  make(input: PaperInput, fitting: (done: number, total: number) => void): Promise<Outcome<Paper> | null>;
  /** ends whatever is being made */
  end(): void;
}

export function openReportDesk(): ReportDesk {
  let worker: Worker | null = null;
  let sender: StateSender | null = null;
  let turn = 0;
  let settle: ((outcome: Outcome<Paper> | null) => void) | null = null;
  let told: (done: number, total: number) => void = () => undefined;

  function stop(outcome: Outcome<Paper> | null): void {
    worker?.terminate();
    worker = null;
    sender?.end();
    sender = null;
    turn += 1;
    settle?.(outcome);
    settle = null;
  }

  function start(): Worker {
    const started = new Worker(new URL("./report-worker.ts", import.meta.url), { type: "module" });
    started.addEventListener("message", ({ data }: MessageEvent<ReportAnswer>) => {
      if (data.id !== turn) return;
      if (data.say === "fitting") return told(data.done, data.total);
      settle?.(data.say === "made" ? good(data.paper) : bad(words.failed));
      settle = null;
    });
    started.addEventListener("error", () => stop(bad(words.failed)));
    return started;
  }

  return {
    async make({ state, ...base }, fitting) {
      // A report of another study, or one still being fitted for this question's forerunner, is of no use any more.
      if (settle) stop(null);
      const mine = ++turn;
      const answer = new Promise<Outcome<Paper> | null>((resolve) => (settle = resolve));
      told = fitting;
      worker ??= start();
      sender ??= stateSender(worker);
      await sender.post(toRaw(state), {
        do: "make",
        id: mine,
        language: spokenLanguage(),
        base,
      } satisfies ReportQuestion);
      return answer;
    },
    end: () => stop(null),
  };
}
