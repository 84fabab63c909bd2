/** One backup as its name tells it. */
export interface BackupName {
  name: string;
  /** ISO */
  at: string;
  reason: BackupReason;
}

export const backupReasons = ["auto", "by-hand", "before-restore", "before-upgrade", "damaged"] as const;
export type BackupReason = (typeof backupReasons)[number];

const hourMs = 3_600_000;
const dayMs = 24 * hourMs;
const mostRecent = 8;

/**
 * The backups that may go: of the last day one an hour stays, of the last month one a day, of older times one a month,
 * the newest eight always. What was made by hand, or before a restore or upgrade, stays for a month like those around
 * it were asked for; a damaged original is never thinned.
 */
export function thinned(backups: BackupName[], now: string): BackupName[] {
  const newestFirst = [...backups].sort((a, b) => (a.at < b.at ? 1 : -1));
  const kept = new Set<string>();
  const gone: BackupName[] = [];
  for (const [i, backup] of newestFirst.entries()) {
    const age = Date.parse(now) - Date.parse(backup.at);
    if (backup.reason === "damaged" || i < mostRecent) continue;
    if (backup.reason !== "auto" && age < 31 * dayMs) continue;
    const slot =
      age < dayMs
        ? `h${backup.at.slice(0, 13)}`
        : age < 31 * dayMs
          ? `d${backup.at.slice(0, 10)}`
          : `m${backup.at.slice(0, 7)}`;
    if (kept.has(slot)) gone.push(backup);
    else kept.add(slot);
  }
  return gone;
}
