import { drawnCurve } from "../../src/report/curve-points.ts";
import { slicer, nextTask } from "../worker/next-task.ts";
import { useChain } from "./chain.ts";
import { useDoseLine } from "./dose-line.ts";
import { useGuide } from "./guide.ts";

/**
 * Works out what the rooms of curves and doses show before one of them is made, in tasks of their own. Each is read once:
 * what follows from the study is kept until that moves.
 */
export async function choiceReady(): Promise<void> {
  const chain = useChain();
  await nextTask();
  void chain.choice;
  void useDoseLine().dose;
  await nextTask();
  useGuide().lackOf("curve");
  const rest = slicer();
  for (const working of chain.workings) {
    drawnCurve(working);
    await rest();
  }
  await nextTask();
}
