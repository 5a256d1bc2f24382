import { crc32, inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { canvas } from '../../lib/writers/still/canvas.ts';
import { png } from '../../lib/writers/still/png.ts';
import { written } from '../written.ts';

/** Chunks of a PNG file; the check sums are zlib's own. */
function chunks(bytes: Uint8Array): Map<string, Buffer> {
  const all = Buffer.from(bytes);
  expect([...all.subarray(0, 8)]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const found = new Map<string, Buffer>();
  for (let at = 8; at < all.length; ) {
    const size = all.readUInt32BE(at);
    expect(all.readUInt32BE(at + 8 + size)).toBe(crc32(all.subarray(at + 4, at + 8 + size)));
    found.set(all.toString('latin1', at + 4, at + 8), all.subarray(at + 8, at + 8 + size));
    at += 12 + size;
  }
  return found;
}

describe('a PNG file', () => {
  it('holds its pixels, each row less the one above', () => {
    const rgb = Uint8Array.from({ length: 2 * 2 * 3 }, (_, k) => 20 * k);
    const found = chunks(png(2, 2, rgb, { Title: 'Oak' }));
    expect(found.get('tEXt')!.toString('latin1')).toBe('Title\0Oak');
    const rows = inflateSync(found.get('IDAT')!);
    expect([...rows]).toEqual([2, 0, 20, 40, 60, 80, 100, 2, 120, 120, 120, 120, 120, 120]);
  });

  it('is what the still of a design is written as', async () => {
    const found = chunks((await written('reading-stool', {}, ['still'])).bytes('preview.png'));
    expect(found.get('IHDR')!.readUInt32BE(0)).toBe(1200);
    const height = found.get('IHDR')!.readUInt32BE(4);
    expect(inflateSync(found.get('IDAT')!)).toHaveLength(height * 3601);
  });
});

describe('a canvas', () => {
  it('fills a slanted triangle with a hole by its area', () => {
    const paint = canvas(300, 300);
    const hole = [
      [60, 60],
      [60, 120],
      [120, 120],
      [120, 60],
    ] as const;
    paint.fill(
      [
        [
          [0, 0],
          [290, 0],
          [0, 290],
        ],
        hole,
      ],
      [0, 0, 0],
    );
    const dark = paint.smaller(1).filter((c) => c === 0).length / 3;
    // Half of 290 x 290 less 60 x 60, to the length of its border.
    expect(Math.abs(dark - (290 * 290) / 2 + 3600)).toBeLessThan(290);
  });
});
