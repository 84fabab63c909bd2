import type { DatabaseSync } from "node:sqlite";
import { commandSchema } from "../../../src/study/commands.ts";

/** Version 2: which entry of the history touched which record, so that a number's own history is found at once. */
export function migrateToSecond(database: DatabaseSync): void {
  database.exec(
    "CREATE TABLE touched (kind TEXT NOT NULL, id TEXT NOT NULL, seq INTEGER NOT NULL, PRIMARY KEY (kind, id, seq)) WITHOUT ROWID;",
  );
  const put = database.prepare("INSERT OR IGNORE INTO touched (kind, id, seq) VALUES (?, ?, ?)");
  for (const row of database.prepare("SELECT seq, command FROM change ORDER BY seq").all()) {
    const parsed = commandSchema.safeParse(JSON.parse(String(row["command"])));
    if (!parsed.success) continue;
    const parts = parsed.data.do === "together" ? parsed.data.commands : [parsed.data];
    for (const part of parts) {
      const id = part.do === "add" ? part.record["id"] : part.id;
      if (typeof id === "string") put.run(part.kind, id, Number(row["seq"]));
    }
  }
}
