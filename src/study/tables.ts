/** One table of a state: records by id, never changed in place. */
export type Table<T extends object = object> = Readonly<Record<string, T>>;

/** Below this many records the engine's own copy is quickest. */
const largeFrom = 500;
/** Further back than this it is quicker to look through the whole table once more. */
const mostSteps = 200;

const keyLists = new WeakMap<object, readonly string[]>();

/** Which table a table was made from, and which records differ. The earlier one may be forgotten at any time. */
const origins = new WeakMap<object, { from: WeakRef<object>; ids: readonly string[] }>();

type Children<T> = Map<string, readonly T[]>;
const indexes = new WeakMap<object, Map<string, Children<object>>>();

/** The ids of a table in its order. */
export function keysOf(table: Table): readonly string[] {
  const known = keyLists.get(table);
  if (known) return known;
  const keys = Object.keys(table);
  keyLists.set(table, keys);
  return keys;
}

/** A copy of a table that may be changed until it is given away. Copying by remembered keys is quicker than a spread. */
export function copyTable<T extends object>(table: Table<T>): Record<string, T> {
  const keys = keysOf(table);
  if (keys.length < largeFrom) return { ...table };
  const copy: Record<string, T> = {};
  for (const key of keys) copy[key] = table[key]!;
  return copy;
}

/** Remembers that `next` is `before` with these records put, replaced or removed, so that what was known of it carries over. */
export function noteOrigin(before: Table, next: Table, ids: readonly string[]): void {
  const keys = keyLists.get(before);
  if (!keys || keys.length < largeFrom) return;
  origins.set(next, { from: new WeakRef(before), ids });
  const gone = new Set(ids.filter((id) => Object.hasOwn(before, id) && !Object.hasOwn(next, id)));
  const added = ids.filter((id) => !Object.hasOwn(before, id) && Object.hasOwn(next, id));
  const left = gone.size > 0 ? keys.filter((key) => !gone.has(key)) : keys;
  keyLists.set(next, added.length > 0 ? [...left, ...added] : left);
}

/**
 * A table that grows part by part until it is whole. Its ids are remembered as they come and its records put under their
 * parents, the records that these fields name, so that nothing goes through all of it once it is there.
 */
export function growingTable<T extends { id: string }>(
  fields: readonly string[],
): { table: Table<T>; add(records: readonly T[]): void } {
  const table: Record<string, T> = {};
  const keys: string[] = [];
  const ofTable = new Map(fields.map((field) => [field, new Map<string, T[]>()]));
  keyLists.set(table, keys);
  indexes.set(table, ofTable);
  return {
    table,
    add(records) {
      for (const record of records) {
        table[record.id] = record;
        keys.push(record.id);
        for (const [field, lists] of ofTable) putUnder(lists, parentOf(record, field), record);
      }
    },
  };
}

/** Adds a record to those of its parent, where it has one. */
function putUnder<T>(lists: Map<string, T[]>, parent: unknown, record: T): void {
  if (typeof parent !== "string") return;
  const list = lists.get(parent);
  if (list) list.push(record);
  else lists.set(parent, [record]);
}

const parentOf = (record: object | undefined, field: string) =>
  record === undefined ? undefined : (record as Record<string, unknown>)[field];

function buildIndex(table: Table, field: string): Children<object> {
  const lists = new Map<string, object[]>();
  for (const key of keysOf(table)) {
    const record = table[key]!;
    putUnder(lists, parentOf(record, field), record);
  }
  return lists;
}

/** Takes the index of the nearest earlier table over and puts the records that differ in their place. */
function inheritedIndex(table: Table, field: string): Children<object> | null {
  const ids = new Set<string>();
  let at: Table = table;
  for (let step = 0; step < mostSteps; step++) {
    const origin = origins.get(at);
    const earlier = origin?.from.deref() as Table | undefined;
    if (!origin || !earlier) return null;
    for (const id of origin.ids) ids.add(id);
    const index = indexes.get(earlier)?.get(field);
    if (index) {
      if (ids.size * 4 > keysOf(table).length) return null;
      indexes.get(earlier)!.delete(field);
      moveRecords(index, earlier, table, field, ids);
      return index;
    }
    at = earlier;
  }
  return null;
}

function moveRecords(
  index: Children<object>,
  earlier: Table,
  table: Table,
  field: string,
  ids: ReadonlySet<string>,
): void {
  const own = (from: Table, id: string) => (Object.hasOwn(from, id) ? from[id] : undefined);
  const replaced = new Map<object, object | undefined>();
  const arrived = new Map<string, object[]>();
  const parents = new Set<string>();
  for (const id of ids) {
    const before = own(earlier, id);
    const after = own(table, id);
    const from = parentOf(before, field);
    const to = parentOf(after, field);
    if (typeof from === "string") parents.add(from);
    if (typeof to === "string") parents.add(to);
    if (before) replaced.set(before, from === to ? after : undefined);
    if (after && typeof to === "string" && (!before || from !== to))
      arrived.set(to, [...(arrived.get(to) ?? []), after]);
  }
  for (const parent of parents) {
    const stayed = (index.get(parent) ?? []).flatMap((record) => {
      const next = replaced.has(record) ? replaced.get(record) : record;
      return next ? [next] : [];
    });
    const list = [...stayed, ...(arrived.get(parent) ?? [])];
    if (list.length > 0) index.set(parent, list);
    else index.delete(parent);
  }
}

/**
 * The records of a table whose `field` names this parent, in the table's order. Found through an index that follows
 * the table from edit to edit, so that a study of 50,000 readings is not searched for the three of one jar.
 */
export function childrenOf<T extends object>(
  table: Table<T>,
  field: keyof T & string,
  parentId: string,
): readonly T[] {
  let ofTable = indexes.get(table);
  if (!ofTable) {
    ofTable = new Map();
    indexes.set(table, ofTable);
  }
  let index = ofTable.get(field);
  if (!index) {
    index = inheritedIndex(table, field) ?? buildIndex(table, field);
    ofTable.set(field, index);
  }
  return (index.get(parentId) ?? []) as readonly T[];
}
