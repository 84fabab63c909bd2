import { DatabaseSync } from "node:sqlite";

/** Looks into a study file with SQLite alone, as anybody may. */
export function inFile<T>(path: string, look: (database: DatabaseSync) => T): T {
  const database = new DatabaseSync(path, { readOnly: true, timeout: 3000 });
  try {
    return look(database);
  } finally {
    database.close();
  }
}

/** Every turbidity that stands in the study file. */
export const turbidities = (path: string) =>
  inFile(path, (database) =>
    database
      .prepare("SELECT data FROM record WHERE kind = 'reading'")
      .all()
      .map((row) => JSON.parse(String(row["data"])) as { result: { value?: number } })
      .map(({ result }) => result.value),
  );

/** The texts kept in the study file that no cell has accepted yet. */
export const draftsIn = (path: string) =>
  inFile(path, (database) =>
    database
      .prepare("SELECT text FROM draft")
      .all()
      .map((row) => String(row["text"])),
  );
