import { bad, good, type Outcome } from "../outcome.ts";
import { sheetWords } from "../words/sheets.ts";

export interface DecodedText {
  text: string;
  encoding: "UTF-8" | "UTF-16" | "Western European";
}

/**
 * Reads the bytes of a text file: UTF-8, UTF-16 (with its mark, or told by its zero bytes), else Western European
 * (windows-1252), which every byte fits, so that a caller must say that this was a guess. A byte-order mark is dropped.
 */
export function decodeText(bytes: Uint8Array): Outcome<DecodedText> {
  const utf16 = utf16Label(bytes);
  try {
    if (utf16 !== null)
      return good({ text: new TextDecoder(utf16, { fatal: true }).decode(bytes), encoding: "UTF-16" });
  } catch {
    return bad(sheetWords.cutShort);
  }
  if (bytes.includes(0)) return bad(sheetWords.notText);
  try {
    return good({ text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), encoding: "UTF-8" });
  } catch {
    return good({ text: new TextDecoder("windows-1252").decode(bytes), encoding: "Western European" });
  }
}

function utf16Label(bytes: Uint8Array): string | null {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  if (bytes.length < 4 || bytes.length % 2 !== 0) return null;
  // Without a mark: text mostly of Latin letters has every second byte zero.
  const head = bytes.subarray(0, 64);
  const zeros = (from: number) => head.filter((byte, index) => index % 2 === from && byte === 0).length;
  if (zeros(1) === head.length / 2 && zeros(0) === 0) return "utf-16le";
  if (zeros(0) === head.length / 2 && zeros(1) === 0) return "utf-16be";
  return null;
}
