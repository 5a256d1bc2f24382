import { describe, expect, it } from 'vitest';
import table from '../../designs/reading-table/design.ts';
import type { LinePanel } from '../../lib/derive/what-if/chart.ts';
import { chartOf } from '../../lib/derive/what-if/chart-of.ts';
import { scaleFor } from '../../lib/derive/what-if/scale.ts';
import type { WhatIf } from '../../lib/derive/what-if/what-if.ts';
import { numberLook } from '../../lib/model/finding-number.ts';
import { chartSvg } from '../../lib/writers/chart-svg.ts';
import { plank } from './plank.ts';
import { collisions, textBoxes } from './text-boxes.ts';
import { tried } from './tried.ts';

const draw = (result: WhatIf, units: 'in' | 'mm' = 'in', title = 'Reading-room table, revision A'): string =>
  chartSvg(chartOf(result, { title, units }));

const CASES: readonly (readonly [string, () => Promise<WhatIf>])[] = [
  ['a length, with values that are not allowed', () => tried(table, 'top.edgeThickness=1/2 in..2 1/2 in:9')],
  ['as many values as can be', () => tried(plank, 'thickness=5 mm..29 mm:25')],
  ['values of two units', () => tried(table, 'top.edgeThickness=1 in,26 mm,1 3/64 in')],
  ['every wood', () => tried(plank, 'wood=beech,cherry,douglas-fir,elm,hickory,mahogany,red-maple,teak,yellow-poplar')],
  ['yes and no', () => tried(table, 'edgeJoint.tenons=yes,no')],
  ['a grid', () => tried(table, 'frame.kind=bearer,posts,panel', 'top.edgeThickness=3/4 in..1 1/2 in:3')],
  ['a grid of many small cells', () => tried(plank, 'thickness=10 mm..45 mm:10', 'width=150 mm..250 mm:10')],
];

describe.each(CASES)('the chart of %s', (_, make) => {
  const svg = make().then((result) => draw(result));

  it('has no text over another, and none outside', async () => {
    const boxes = textBoxes(await svg);
    const [, width = 0, height = 0] = /viewBox="0 0 (\d+) ([\d.]+)"/.exec(await svg)?.map(Number) ?? [];
    expect(boxes.length).toBeGreaterThan(10);
    expect(collisions(boxes)).toEqual([]);
    const outside = boxes.filter(
      ({ left, right, top, bottom }) => left < 0 || top < 0 || right > width || bottom > height,
    );
    expect(outside).toEqual([]);
  });

  it('is the same every time, and well formed', async () => {
    expect(draw(await make())).toBe(await svg);
    expect(await svg).not.toMatch(/NaN|undefined|Infinity/);
    expect((await svg).match(/<g[ >]/g)?.length).toBe((await svg).match(/<\/g>/g)?.length);
  });
});

describe('what is drawn', () => {
  const result = tried(table, 'top.edgeThickness=1/2 in..2 1/2 in:5');
  const panel = async (title: string): Promise<LinePanel> =>
    chartOf(await result, { title: '', units: 'in' }).panels.find((one) => one.title === title) as LinePanel;

  it('stands to scale: the edge thickness is a straight line that crosses its limit at 3/4 in', async () => {
    const { marks, across, ticks, note } = await panel('edge thickness');
    expect(note).toBe('in, from 3/4 in');
    expect(across.label).toBe('top.edgeThickness, in');
    expect(across.ticks.map(({ text }) => text)).toEqual(['1/2', '1', '1 1/2', '2', '2 1/2']);
    // Values of 1/2 and 1 in lie at marks 0 and 1: half way between them is the limit.
    const [half, one] = marks;
    expect(half!.limit).toBeCloseTo((half!.up! + one!.up!) / 2, 9);
    expect(marks.map(({ refused }) => refused)).toEqual([false, false, false, false, true]);
    expect(marks[4]!.up).toBeUndefined();
    const tick = ticks.find(({ text }) => text === '1')!;
    expect(tick.at).toBeCloseTo(one!.up!, 9);
  });

  it('has a band of a verdict around each value, and the place of the design itself', async () => {
    const { borders, across, marks } = await panel('edge thickness');
    expect(borders).toHaveLength(marks.length + 1);
    expect(borders[0]).toBe(0);
    expect(borders.at(-1)).toBe(1);
    // 1 1/8 in is five eighths of the way from 1/2 to 1 1/2 in.
    const [low, , high] = across.ticks;
    expect(across.now).toBeCloseTo(low!.at + (high!.at - low!.at) * 0.625, 9);
  });

  it('shows the worst first, and tells what there was no room for', async () => {
    const chart = chartOf(await result, { title: '', units: 'in' });
    const troubled = chart.panels.map(
      (one) => one.kind === 'lines' && one.marks.some(({ verdict }) => verdict === 'change it'),
    );
    expect(troubled[0] || troubled[1]).toBe(true);
    expect(chart.panels.slice(-2).map(({ title }) => title)).toEqual(['mass', 'board feet']);
    expect(chart.rest).toMatch(/^Also changing, ok throughout: .+ to .+/);
  });

  it('tells verdicts by shape and word, not by color alone', async () => {
    const svg = draw(await result);
    for (const word of ['change it', 'look again', 'ok', 'not allowed', 'limit', 'the design as it is']) {
      expect(svg).toContain(`>${word}</text>`);
    }
    expect(svg).toContain('d="M0-5L5 4H-5Z"');
    expect(svg).toContain('d="M-4-4h8v8h-8Z"');
  });

  it('escapes what a maker may call a design', async () => {
    expect(draw(await tried(plank, 'boards=1,2'), 'mm', 'Mia & Jo\'s "<desk>"')).toContain('&lt;desk&gt;');
  });
});

describe('scales', () => {
  const inches = numberLook('mm', [6.35], 'in');
  const plain = numberLook('kg', [], 'mm');
  const pounds = numberLook('kg', [], 'in');

  it('have round numbers: fractions of an inch, or 1, 2 and 5', () => {
    expect(scaleFor([3.175, 38.1], inches).ticks.map(({ text }) => text)).toEqual(['0', '1/2', '1', '1 1/2']);
    expect(scaleFor([0, 100], plain).ticks.map(({ text }) => text)).toEqual(['0', '20', '40', '60', '80', '100']);
    expect(scaleFor([0.31, 0.36], plain).ticks.map(({ text }) => text)).toEqual([
      '0.31',
      '0.32',
      '0.33',
      '0.34',
      '0.35',
      '0.36',
    ]);
  });

  it('are round in the unit that is printed', () => {
    expect(scaleFor([0, 100], pounds).ticks.map(({ text }) => text)).toEqual(['0', '50', '100', '150', '200']);
    const thousandths = numberLook('mm', [6], 'in');
    expect(scaleFor([0.254, 5.08], thousandths).ticks.map(({ text }) => text)).toEqual([
      '0',
      '0.05',
      '0.1',
      '0.15',
      '0.2',
    ]);
  });

  it('name the one number that there is', () => {
    expect(scaleFor([81, 81], plain).ticks).toEqual([{ value: 81, text: '81' }]);
  });

  it('hold every value, also a single one, and negative ones', () => {
    for (const values of [[5], [0], [-70, 62], [-3, -2.9], [1e-9, 2e-9], [27, 27.3]]) {
      const { low, high, ticks } = scaleFor(values, plain);
      expect(low).toBeLessThan(high);
      expect(low).toBeLessThanOrEqual(Math.min(...values));
      expect(high).toBeGreaterThanOrEqual(Math.max(...values));
      expect(ticks.length).toBeLessThan(9);
    }
  });
});

it('a text over another is seen', () => {
  const text = (x: number): string =>
    `<text x="${x}" y="20" font-size="11" text-anchor="start" fill="#000">limit</text>`;
  expect(collisions(textBoxes(text(10) + text(60)))).toEqual([]);
  expect(collisions(textBoxes(text(10) + text(35)))).toEqual(['limit / limit']);
});
