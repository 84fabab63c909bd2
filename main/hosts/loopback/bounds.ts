/** What this host takes in at most. Generous for its own screens, far below what could tire the machine. */
export const bounds = {
  bodyBytes: 8 * 1024 * 1024,
  /** an edit may be a whole import: one step that undo takes back whole */
  editBytes: 48 * 1024 * 1024,
  headerBytes: 16 * 1024,
  addressChars: 2048,
  /** how long a request's head, and a whole request, may take to arrive, in ms */
  headMs: 10_000,
  requestMs: 60_000,
  /** how long an idle connection is kept, in ms */
  idleMs: 5_000,
  /** how often slow requests are looked for, in ms */
  lookMs: 1_000,
  connections: 100,
} as const;

/** How long after its last window closed a host of an own window ends: long enough for a reload, in ms. */
export const reloadGraceMs = 10_000;
