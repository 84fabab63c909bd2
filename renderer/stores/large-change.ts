import { bad, good, type Outcome } from "../../src/outcome.ts";
import { inSlices } from "../../src/steps.ts";
import { applyInSteps, type Command, type SimpleCommand } from "../../src/study/commands.ts";
import type { ToldChange } from "../../src/study/history.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { call } from "../client.ts";
import { slicer } from "../worker/next-task.ts";

/** The command of an entry that was told in short, its parts fetched. */
async function wholeCommand({ seq, command }: ToldChange): Promise<Outcome<Command>> {
  if (command.do !== "together") return good(command);
  const commands: SimpleCommand[] = [];
  for (let more = true; more;) {
    const part = await call("study.changeParts", { seq, from: commands.length });
    if (!part.ok) return bad(part.message);
    commands.push(...part.value.commands);
    ({ more } = part.value);
  }
  return good({ ...command, commands });
}

/** The state after an entry of any size, worked out in slices. Refused where its parts cannot be had. */
export async function afterLarge(state: StudyState, change: ToldChange): Promise<Outcome<StudyState>> {
  const command = await wholeCommand(change);
  if (!command.ok) return command;
  const applied = await inSlices(applyInSteps(state, command.value), slicer());
  return applied.ok ? good(applied.value.state) : applied;
}
