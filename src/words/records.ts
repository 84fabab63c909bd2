import { area } from "./language.ts";

/** What a kind of record is called in a sentence, singular and plural. */
export const kindWords = area("kinds", {
  study: { one: "study", many: "studies" },
  person: { one: "person", many: "people" },
  stream: { one: "sludge stream", many: "sludge streams" },
  machine: { one: "machine", many: "machines" },
  product: { one: "product", many: "products" },
  sample: { one: "sample", many: "samples" },
  dish: { one: "dish", many: "dishes" },
  stock: { one: "stock solution", many: "stock solutions" },
  series: { one: "series", many: "series" },
  jar: { one: "jar", many: "jars" },
  reading: { one: "reading", many: "readings" },
  photo: { one: "photo", many: "photos" },
  targets: { one: "set of targets", many: "sets of targets" },
  decision: { one: "decision", many: "decisions" },
  feedCase: { one: "feed case", many: "feed cases" },
  makeDown: { one: "plant make-down", many: "plant make-downs" },
  pump: { one: "pump", many: "pumps" },
  drawDown: { one: "draw-down", many: "draw-downs" },
  cylinderCheck: { one: "cylinder check", many: "cylinder checks" },
  tableApproval: { one: "approval of settings", many: "approvals of settings" },
  landLimit: { one: "limit on land", many: "limits on land" },
  mixing: { one: "mixing place", many: "mixing places" },
  stepTest: { one: "step test", many: "step tests" },
  plantRun: { one: "plant run", many: "plant runs" },
  runDose: { one: "run's dose", many: "runs' doses" },
});

/** Why a change to the records of a study is refused. The kinds come in as they are called. */
export const recordWords = area("records", {
  unreadable: (kind: string) =>
    `This study holds a ${kind} record that does not fit its kind. It is left as it is.`,
  linkMissing: (kind: string, named: string) => `The ${kind} names a ${named} that is not in the study.`,
  inUse: (kind: string, count: number, user: string, users: string) =>
    count === 1
      ? `This ${kind} is used by 1 ${user}: remove or change that first.`
      : `This ${kind} is used by ${count} ${users}: remove or change those first.`,
  nameTaken: (kind: string, name: string) =>
    `There is already a ${kind} called "${name}": give this one another name.`,
  idTaken: (kind: string) => `There is already a ${kind} with this id.`,
  gone: (kind: string) => `This ${kind} is no longer in the study.`,
  studyStays: "The study's own record cannot be removed.",
  decisionStays: "An approved decision is never changed: withdraw it with a reason and approve another.",
  tableApprovalStays: "An approval of settings is never changed: approve the settings anew.",
  idStays: "A record's id cannot be changed.",
});
