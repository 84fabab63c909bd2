import type { Verb } from "./verbs/verb.ts";

// A verb is one file in verbs/, loaded only when it is asked for, so that a small question starts quickly.
const verbs: Record<string, () => Promise<Verb>> = {
  fit: async () => (await import("./verbs/fit.ts")).fit,
  surface: async () => (await import("./verbs/surface.ts")).surface,
  analyse: async () => (await import("./verbs/analyse.ts")).analyse,
  rates: async () => (await import("./verbs/rates.ts")).rates,
  calibrate: async () => (await import("./verbs/calibrate.ts")).calibrate,
  plan: async () => (await import("./verbs/plan.ts")).plan,
  demo: async () => (await import("./verbs/demo.ts")).demo,
  inspect: async () => (await import("./verbs/inspect.ts")).inspect,
  import: async () => (await import("./verbs/import.ts")).importVerb,
  export: async () => (await import("./verbs/export.ts")).exportVerb,
  schema: async () => (await import("./verbs/schema.ts")).schema,
  report: async () => (await import("./verbs/report.ts")).report,
  sheet: async () => (await import("./verbs/sheet.ts")).sheet,
  host: async () => (await import("./verbs/host.ts")).host,
};

function refuse(message: string): never {
  process.stderr.write(message.replace(/\s*\n\s*/g, " ") + "\n");
  process.exit(2);
}

async function main(): Promise<void> {
  const [name, ...args] = process.argv.slice(2);
  if (name === undefined) refuse(`Name a verb: ${Object.keys(verbs).join(", ")}.`);
  const load = Object.hasOwn(verbs, name) ? verbs[name] : undefined;
  if (!load) refuse(`There is no verb "${name}"; there are: ${Object.keys(verbs).join(", ")}.`);
  const verb = await load();
  const outcome = await verb.run(args);
  if (!outcome.ok) refuse(outcome.message);
  process.stdout.write(JSON.stringify(outcome.value) + "\n", () => {
    if (!verb.stays) process.exit(0);
  });
}

main().catch((error: unknown) => {
  refuse(`Something in Flocwright itself failed: ${error instanceof Error ? error.message : String(error)}`);
});
