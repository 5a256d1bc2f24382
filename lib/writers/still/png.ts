import { deflate } from '../zip.ts';

const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

/** A PNG file (W3C recommendation, ISO/IEC 15948) of 8-bit RGB pixels, with texts in Latin-1 by keyword. */
export function png(
  width: number,
  height: number,
  rgb: Uint8Array,
  texts: Readonly<Record<string, string>>,
): Uint8Array {
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  header.set([8, 2, 0, 0, 0], 8);
  const blocks = [
    Uint8Array.from(SIGNATURE),
    chunk('IHDR', header),
    ...Object.entries(texts).map(([key, text]) => chunk('tEXt', latin1(`${key}\0${text}`))),
    chunk('IDAT', deflate(filtered(width, height, rgb))),
    chunk('IEND', new Uint8Array()),
  ];
  const bytes = new Uint8Array(blocks.reduce((sum, b) => sum + b.length, 0));
  let at = 0;
  for (const block of blocks) {
    bytes.set(block, at);
    at += block.length;
  }
  return bytes;
}

/** Every row less the one above it (filter 2): large even areas compress well. */
function filtered(width: number, height: number, rgb: Uint8Array): Uint8Array {
  const stride = 3 * width;
  const out = new Uint8Array(height * (stride + 1));
  for (let y = 0; y < height; y++) {
    out[y * (stride + 1)] = 2;
    for (let k = 0; k < stride; k++) {
      const above = y > 0 ? rgb[(y - 1) * stride + k]! : 0;
      out[y * (stride + 1) + 1 + k] = rgb[y * stride + k]! - above;
    }
  }
  return out;
}

const latin1 = (text: string): Uint8Array =>
  Uint8Array.from([...text], (char) => {
    const code = char.codePointAt(0)!;
    return code < 256 ? code : 0x3f;
  });

function chunk(type: string, data: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(12 + data.length);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  bytes.set(latin1(type), 4);
  bytes.set(data, 8);
  view.setUint32(8 + data.length, crc(bytes.subarray(4, 8 + data.length)));
  return bytes;
}

const TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c >>> 0;
});

/** The check sum of PNG, annex D. */
function crc(bytes: Uint8Array): number {
  let c = 0xffffffff;
  for (const byte of bytes) c = TABLE[(c ^ byte) & 0xff]! ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}
