import { describe, expect, test } from 'vitest';
import { pictureOf } from '../../lib/derive/drawings/picture.ts';
import { VIEWS } from '../../lib/derive/drawings/view.ts';
import { writePictureSvg } from '../../lib/writers/picture-svg.ts';
import { placedBlock, smallTable } from './scenes.ts';

const block = () => pictureOf([placedBlock('block', [480, 10, 200], [0, 0, 0])], VIEWS.front);

describe('writePictureSvg', () => {
  test('a block from the front, at half size', () => {
    // 480 mm across in 240 mm of paper: half size, 100 mm high. Front: tone (1 + 0.6 / |light|) / 2 with |light| =
    // √(0.35² + 0.6² + 0.9²) = 1.1369: 0.7639, so red 188 + 62 * 0.7639 = 235, green 152 + 84 * 0.7639 = 216, blue 110 +
    // 100 * 0.7639 = 186: #ebd8ba.
    expect(writePictureSvg(block(), { title: 'Block', caption: '480 mm x 200 mm' })).toMatchInlineSnapshot(`
      "<svg xmlns="http://www.w3.org/2000/svg" width="252mm" height="125mm" viewBox="-6 -6 252 125" role="img">
      <title>Block</title>
      <g stroke-width="0.1" stroke-linejoin="round" fill-rule="evenodd">
      <path d="M0 100L240 100L240 0L0 0Z" fill="#ebd8ba" stroke="#ebd8ba"/>
      </g>
      <g fill="none" stroke="#1a1a1a" stroke-linecap="round">
      <path d="M0 100L0 0M0 100L240 100M0 0L240 0M240 100L240 0" stroke-width="0.5"/>
      </g>
      <text x="120" y="109.25" font-family="sans-serif" font-size="4.86" text-anchor="middle" fill="#1a1a1a">Block</text>
      <text x="120" y="115.75" font-family="sans-serif" font-size="3.47" text-anchor="middle" fill="#1a1a1a">480 mm x 200 mm</text>
      </svg>
      "
    `);
  });

  test('is as large as width and height both allow', () => {
    expect(writePictureSvg(block(), { title: '', width: 1000, height: 50, margin: 0 })).toMatch(
      /^<svg [^>]*width="120mm" height="50mm" viewBox="0 0 120 50"/,
    );
  });

  test('prints at most two decimals, no exponent, no negative zero, and repeats itself', () => {
    const once = writePictureSvg(pictureOf(smallTable()), { title: 'Table' });
    expect(once).toBe(writePictureSvg(pictureOf(smallTable()), { title: 'Table' }));
    const numbers = [...once.matchAll(/d="([^"]*)"/g)].flatMap((m) => m[1]!.split(/[MLZ ]+/)).filter((n) => n !== '');
    expect(numbers.length).toBeGreaterThan(500);
    expect(numbers.filter((n) => !/^-?(0|[1-9]\d*)(\.\d?[1-9])?$/.test(n) || n === '-0')).toEqual([]);
  });

  test('escapes what the caller writes', () => {
    const svg = writePictureSvg(block(), { title: 'Oak & "ash"', caption: '<6 ft' });
    expect(svg).toContain('<title>Oak &amp; &quot;ash&quot;</title>');
    expect(svg).toContain('>&lt;6 ft</text>');
  });

  test('refuses a picture of nothing', () => {
    expect(() => writePictureSvg(pictureOf([]), { title: 'Empty' })).toThrow('the picture "Empty" has nothing in it');
  });
});
