import { bad, good, type Outcome } from "../../outcome.ts";
import { recordWords } from "../../words/records.ts";
import { acceptorOf, type Acceptor } from "./accept.ts";
import { kinds, recordSchemas, type AnyRecord, type Kind } from "./records.ts";

const accepts = Object.fromEntries(kinds.map((kind) => [kind, acceptorOf(recordSchemas[kind])])) as Record<
  Kind,
  Acceptor
>;

/**
 * A record as it was stored. Every one is judged: quickly where it stands exactly as its schema would leave it, else by
 * the schema's own parser, which fills in what a later version added and refuses what does not fit.
 */
export function readRecord(kind: Kind, value: unknown): Outcome<AnyRecord> {
  if (accepts[kind](value)) return good(value as AnyRecord);
  const parsed = recordSchemas[kind].safeParse(value);
  return parsed.success ? good(parsed.data as AnyRecord) : bad(recordWords.unreadable(kind));
}
