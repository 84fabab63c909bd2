import { nextTask } from "../worker/next-task.ts";
import { useChain } from "./chain.ts";
import { useDoseLine } from "./dose-line.ts";

/** Works out the choice among the doses and the one looked at before a room shows them, in a task between the two. */
export async function choiceReady(): Promise<void> {
  await nextTask();
  // Read once: what follows from the study is kept until that moves.
  void useChain().choice;
  void useDoseLine().dose;
  await nextTask();
}
