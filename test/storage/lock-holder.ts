// Holds SQLite's own lock on a file, as a sync program or a database browser may, until its input ends.
import { writeSync } from "node:fs";
import { DatabaseSync } from "node:sqlite";

const database = new DatabaseSync(process.argv[2]!);
database.exec("BEGIN EXCLUSIVE");
writeSync(1, "held\n");
process.stdin.on("end", () => {
  database.exec("ROLLBACK");
  database.close();
});
process.stdin.resume();
