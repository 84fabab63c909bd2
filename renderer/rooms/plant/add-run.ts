import { runsOf } from "../../../src/study/derive/plant-runs.ts";
import { plantTrialWords } from "../../../src/words/plant-trials.ts";
import { useChain } from "../../stores/chain.ts";
import { useEdit } from "../../stores/edit.ts";
import { newId } from "../../stores/ids.ts";
import { usePeople } from "../../stores/people.ts";
import { useSelection } from "../../stores/selection.ts";
import { useStudy } from "../../stores/study.ts";

/** Starts the log of a run now, held against the approved dose, with one empty entry for each polymer's pump. */
export function useAddRun() {
  const study = useStudy();
  const chain = useChain();
  const selection = useSelection();
  const edit = useEdit();
  const people = usePeople();

  return async function addRun(name?: string): Promise<string | null> {
    const seriesId = selection.seriesId;
    if (!seriesId || !study.state) return null;
    const id = newId();
    const runs = runsOf(study.state, seriesId);
    const names = new Set(runs.map(({ run }) => run.label.toLowerCase()));
    let number = runs.length + 1;
    while (names.has(plantTrialWords.newRun(number).toLowerCase())) number += 1;
    const label = name && !names.has(name.toLowerCase()) ? name : plantTrialWords.newRun(number);
    const polymers = (chain.plant?.polymers ?? []).filter(({ makeDown }) => makeDown);
    const outcome = await edit.together(plantTrialWords.logged(label), [
      {
        do: "add",
        kind: "plantRun",
        record: {
          id,
          label,
          seriesId,
          decisionId: chain.decision?.decision.id ?? null,
          machineId: Object.keys(study.state.machine).sort()[0] ?? null,
          at: new Date().toISOString(),
          byName: people.current,
        },
      },
      ...polymers.map((polymer, index) => ({
        do: "add" as const,
        kind: "runDose" as const,
        record: {
          id: `${id}-${"ab"[index]}`,
          runId: id,
          makeDownId: polymer.makeDown!.id,
          pumpId: polymer.pump?.pump.id ?? null,
        },
      })),
    ]);
    return outcome.ok ? id : null;
  };
}
