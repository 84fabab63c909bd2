import type { OutputOf } from "../../../src/contract.ts";

export type BackupEntry = OutputOf<"backup.list">["entries"][number];

const reasons: Record<BackupEntry["reason"], string> = {
  auto: "made by itself",
  "by-hand": "made by hand",
  "before-restore": "what stood here before a restore",
  "before-upgrade": "before an upgrade of the file",
  damaged: "the damaged file as it was",
};

/** A backup in words: when, why, how large. */
export function backupWords({ at, reason, bytes }: BackupEntry): string {
  const when = new Date(at).toLocaleString(undefined, { dateStyle: "medium", timeStyle: "medium" });
  return `${when}, ${reasons[reason]}, ${Math.max(1, Math.round(bytes / 1024))} kB`;
}
