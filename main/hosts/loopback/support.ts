import { homedir } from "node:os";
import { dirname, join } from "node:path";
import packageFile from "../../../package.json" with { type: "json" };
import type { HostSupport } from "../../service.ts";
import { recentFileName } from "../../service/recent.ts";

/** The folder that holds a person's studies: FLOCWRIGHT_FOLDER, else "Flocwright" in the home folder. */
function studiesFolder(): string {
  return process.env["FLOCWRIGHT_FOLDER"] ?? join(homedir(), "Flocwright");
}

/** What the loopback host brings. Where it was started on one study, that study's folder is the shelf. */
export function loopbackSupport(studyPath: string | null): HostSupport {
  const folder = studyPath ? dirname(studyPath) : studiesFolder();
  return {
    host: "loopback",
    version: packageFile.version,
    now: () => new Date().toISOString(),
    folder,
    recentFile: join(folder, recentFileName),
    dialogs: null,
  };
}
