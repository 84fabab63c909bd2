import { bad, good, type Outcome } from "../outcome.ts";
import { limits } from "./limits.ts";
import { sheetWords } from "../words/sheets.ts";

/** One file inside an archive. */
export interface ZipPart {
  path: string;
  bytes: Uint8Array;
}

const endMark = 0x06054b50;
const centralMark = 0x02014b50;
const localMark = 0x04034b50;

interface Entry {
  path: string;
  method: number;
  packed: Uint8Array<ArrayBuffer>;
  size: number;
}

/**
 * Unpacks the parts of an archive that `wanted` asks for. The directory's sizes are looked at before anything is
 * unpacked, and the unpacking itself stops at the same bound, so that an archive that lies about its size is refused too.
 */
export async function unpackZip(
  bytes: Uint8Array<ArrayBuffer>,
  wanted: (path: string) => boolean,
): Promise<Outcome<ZipPart[]>> {
  const entries = readDirectory(bytes, wanted);
  if (!entries.ok) return entries;
  if (entries.value.reduce((sum, entry) => sum + entry.size, 0) > limits.unpackedBytes)
    return bad(sheetWords.archiveLarge);
  let room = limits.unpackedBytes;
  const parts: ZipPart[] = [];
  for (const entry of entries.value) {
    const unpacked = entry.method === 0 ? good(entry.packed) : await inflate(entry.packed, room);
    if (!unpacked.ok) return unpacked;
    room -= unpacked.value.length;
    if (room < 0) return bad(sheetWords.archiveLarge);
    parts.push({ path: entry.path, bytes: unpacked.value });
  }
  return good(parts);
}

function readDirectory(bytes: Uint8Array<ArrayBuffer>, wanted: (path: string) => boolean): Outcome<Entry[]> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let end = bytes.length - 22;
  while (end >= 0 && end > bytes.length - 65_558 && view.getUint32(end, true) !== endMark) end -= 1;
  if (end < 0 || view.getUint32(end, true) !== endMark) return bad(sheetWords.archiveBroken);
  const count = view.getUint16(end + 10, true);
  if (count > limits.parts) return bad(sheetWords.archiveLarge);
  let at = view.getUint32(end + 16, true);
  const entries: Entry[] = [];
  try {
    for (let index = 0; index < count; index++) {
      if (view.getUint32(at, true) !== centralMark) return bad(sheetWords.archiveBroken);
      const flags = view.getUint16(at + 8, true);
      const method = view.getUint16(at + 10, true);
      const packedSize = view.getUint32(at + 20, true);
      const size = view.getUint32(at + 24, true);
      const nameLength = view.getUint16(at + 28, true);
      const extra = view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
      const local = view.getUint32(at + 42, true);
      const path = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength));
      at += 46 + nameLength + extra;
      if (!wanted(path)) continue;
      if (flags & 1) return bad(sheetWords.archiveLocked);
      if (method !== 0 && method !== 8) return bad(sheetWords.archiveBroken);
      if (view.getUint32(local, true) !== localMark) return bad(sheetWords.archiveBroken);
      const start = local + 30 + view.getUint16(local + 26, true) + view.getUint16(local + 28, true);
      if (start + packedSize > bytes.length) return bad(sheetWords.archiveBroken);
      entries.push({ path, method, packed: bytes.subarray(start, start + packedSize), size });
    }
  } catch (error) {
    if (error instanceof RangeError) return bad(sheetWords.archiveBroken);
    throw error;
  }
  return good(entries);
}

async function inflate(
  packed: Uint8Array<ArrayBuffer>,
  room: number,
): Promise<Outcome<Uint8Array<ArrayBuffer>>> {
  const reader = new Blob([packed]).stream().pipeThrough(new DecompressionStream("deflate-raw")).getReader();
  const chunks: Uint8Array[] = [];
  let size = 0;
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      size += value.length;
      if (size > room) {
        await reader.cancel();
        return bad(sheetWords.archiveLarge);
      }
      chunks.push(value);
    }
  } catch {
    return bad(sheetWords.archiveBroken);
  }
  return good(joined(chunks, size));
}

function joined(chunks: Uint8Array[], size: number): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

const crcTable = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? 0xedb88320 ^ (value >>> 1) : value >>> 1;
  return value;
});

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = crcTable[(crc ^ byte) & 0xff]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const packed = new Blob([bytes]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

/** Packs parts into an archive, compressed or (for a reader close by) as they are. All parts are dated 1 January 1980. */
export async function packZip(parts: ZipPart[], compress: boolean): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let offset = 0;
  for (const part of parts) {
    const own = new Uint8Array(part.bytes);
    const data = compress ? await deflate(own) : own;
    const path = new TextEncoder().encode(part.path);
    const shared = new DataView(new ArrayBuffer(26));
    shared.setUint16(0, 20, true);
    shared.setUint16(2, 0x0800, true); // names in UTF-8
    shared.setUint16(4, compress ? 8 : 0, true);
    shared.setUint16(8, 0x21, true); // 1980-01-01
    shared.setUint32(10, crc32(own), true);
    shared.setUint32(14, data.length, true);
    shared.setUint32(18, own.length, true);
    shared.setUint16(22, path.length, true);
    const sharedBytes = new Uint8Array(shared.buffer);
    const local = new Uint8Array(30 + path.length);
    new DataView(local.buffer).setUint32(0, localMark, true);
    local.set(sharedBytes, 4);
    local.set(path, 30);
    const central = new Uint8Array(46 + path.length);
    const centralView = new DataView(central.buffer);
    centralView.setUint32(0, centralMark, true);
    centralView.setUint16(4, 20, true);
    central.set(sharedBytes, 6);
    centralView.setUint32(42, offset, true);
    central.set(path, 46);
    chunks.push(local, data);
    directory.push(central);
    offset += local.length + data.length;
  }
  const directorySize = directory.reduce((sum, entry) => sum + entry.length, 0);
  const end = new Uint8Array(22);
  const endView = new DataView(end.buffer);
  endView.setUint32(0, endMark, true);
  endView.setUint16(8, parts.length, true);
  endView.setUint16(10, parts.length, true);
  endView.setUint32(12, directorySize, true);
  endView.setUint32(16, offset, true);
  return joined([...chunks, ...directory, end], offset + directorySize + 22);
}
