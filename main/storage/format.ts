import type { DatabaseSync } from "node:sqlite";
import { migrateToFirst } from "./migrations/0001-first.ts";
import { migrateToSecond } from "./migrations/0002-touched.ts";

/** Marks a study file among SQLite files: the letters "Floc" as a 32-bit number. */
export const applicationId = 0x466c6f63;

/** One migration a version, in order. The file's user_version says how many have run. */
export const migrations: ((database: DatabaseSync) => void)[] = [migrateToFirst, migrateToSecond];

export const formatVersion = migrations.length;

/** The file's name ends so. */
export const extension = ".flocwright";
