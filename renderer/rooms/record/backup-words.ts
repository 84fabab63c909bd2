import type { OutputOf } from "../../../src/contract.ts";
import { recordWords } from "../../../src/words/record.ts";
import { dateTag } from "../../language.ts";

export type BackupEntry = OutputOf<"backup.list">["entries"][number];

/** A backup in words: when, why, how large. */
export function backupWords({ at, reason, bytes }: BackupEntry): string {
  const words = recordWords.backups;
  const when = new Date(at).toLocaleString(dateTag(), { dateStyle: "medium", timeStyle: "medium" });
  return words.entry(when, words.reasons[reason], Math.max(1, Math.round(bytes / 1024)));
}
