// Writes docs/methods.md from the list of methods in src/methods.
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { format, resolveConfig } from "prettier";
import { methodsPage } from "../src/methods/page.ts";

const path = join(import.meta.dirname, "..", "docs", "methods.md");
writeFileSync(path, await format(methodsPage(), { ...(await resolveConfig(path)), filepath: path }));
