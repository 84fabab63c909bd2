import type { DatabaseSync } from "node:sqlite";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { keepBytes } from "./backups.ts";
import { formatVersion, migrations } from "./format.ts";
import { atStep } from "./steps.ts";
import { storageWords } from "../../src/words/storage.ts";

/**
 * Brings an older study to this version: its bytes are kept among its backups first, then all migrations run in one
 * transaction. The database must be open for writing with no transaction running.
 */
export function upgradeStudy(
  database: DatabaseSync,
  path: string,
  from: number,
  now: string,
): Outcome<string> {
  const kept = keepBytes(path, "before-upgrade", now);
  if (!kept.ok) return bad(storageWords.open.notUpgraded(kept.message));
  atStep("upgrade: copy kept");
  database.exec("BEGIN IMMEDIATE");
  try {
    for (const migrate of migrations.slice(from)) {
      migrate(database);
      atStep("upgrade: migrated");
    }
    database.exec(`PRAGMA user_version = ${formatVersion}`);
    atStep("upgrade: before commit");
    database.exec("COMMIT");
    atStep("upgrade: committed");
  } catch (error) {
    if (database.isTransaction) database.exec("ROLLBACK");
    throw error;
  }
  return good(storageWords.open.upgraded(from, formatVersion));
}
