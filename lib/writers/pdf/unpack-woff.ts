import { unzlibSync } from 'fflate';

/** Sizes in bytes of the heads and directory entries of a WOFF 1.0 file and of the font in it (W3C recommendation of 2012). */
const WOFF = { head: 44, entry: 20 } as const;
const FONT = { head: 12, entry: 16 } as const;

const unpacked = new WeakMap<Uint8Array, Uint8Array>();

/**
 * The font that a WOFF file holds, every table unpacked: the reader of fonts unpacks a table anew for each document, and slowly.
 *
 * @throws RangeError for anything but WOFF 1.0.
 */
export function unpackWoff(file: Uint8Array): Uint8Array {
  const known = unpacked.get(file);
  if (known) return known;
  const font = unpack(file);
  unpacked.set(file, font);
  return font;
}

interface Entry {
  readonly tag: number;
  readonly checksum: number;
  readonly bytes: Uint8Array;
}

function unpack(file: Uint8Array): Uint8Array {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  if (file.length < WOFF.head || view.getUint32(0) !== 0x774f4646) {
    throw new RangeError(`a font of ${file.length} bytes is not WOFF 1.0`);
  }
  const count = view.getUint16(12);
  const entries = Array.from({ length: count }, (_, k): Entry => {
    const at = WOFF.head + k * WOFF.entry;
    const [offset, packed, size] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)];
    const bytes = file.subarray(offset, offset + packed);
    return {
      tag: view.getUint32(at),
      checksum: view.getUint32(at + 16),
      bytes: packed < size ? unzlibSync(bytes) : bytes,
    };
  });
  return fontOf(view.getUint32(4), entries);
}

/** Tables one after the other, each on a multiple of four bytes, with the directory before them. */
function fontOf(flavor: number, entries: readonly Entry[]): Uint8Array {
  const padded = ({ bytes }: Entry): number => Math.ceil(bytes.length / 4) * 4;
  const start = FONT.head + entries.length * FONT.entry;
  const font = new Uint8Array(start + entries.reduce((sum, entry) => sum + padded(entry), 0));
  const view = new DataView(font.buffer);
  const power = Math.floor(Math.log2(entries.length));
  view.setUint32(0, flavor);
  view.setUint16(4, entries.length);
  view.setUint16(6, 16 * 2 ** power);
  view.setUint16(8, power);
  view.setUint16(10, 16 * (entries.length - 2 ** power));
  let at = start;
  entries.forEach((entry, k) => {
    const row = FONT.head + k * FONT.entry;
    view.setUint32(row, entry.tag);
    view.setUint32(row + 4, entry.checksum);
    view.setUint32(row + 8, at);
    view.setUint32(row + 12, entry.bytes.length);
    font.set(entry.bytes, at);
    at += padded(entry);
  });
  return font;
}
