import { describe, expect, test } from 'vitest';
import { centeredIn } from '../../lib/drawing/arrange.ts';
import { block } from '../../lib/drawing/block.ts';
import type { Dim } from '../../lib/drawing/dim.ts';
import type { Entity } from '../../lib/drawing/drawing.ts';
import type { Pt } from '../../lib/drawing/entity.ts';
import { explode } from '../../lib/drawing/explode.ts';
import { linesWithin } from '../../lib/drawing/fit-text.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { makeSheet } from '../../lib/drawing/make-sheet.ts';
import { move } from '../../lib/drawing/move.ts';
import { PAPERS, type PaperSize } from '../../lib/drawing/paper.ts';
import { place } from '../../lib/drawing/place.ts';
import { projectionSymbol } from '../../lib/drawing/projection-symbol.ts';
import type { SheetHeading, SheetPlan } from '../../lib/drawing/sheet.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { scaleText } from '../../lib/drawing/title-block.ts';
import { collisions } from '../drawings/collisions.ts';
import { aligned, angular, diameter, linear, radius } from './samples.ts';

const heading = (paper: PaperSize, more: Partial<SheetHeading> = {}): SheetHeading => ({
  paper: PAPERS[paper],
  projection: 'third',
  lengths: 'mm',
  owner: 'Workshop at the mill',
  piece: 'Table',
  number: '12',
  revision: 'A',
  date: '2026-11-25',
  sheet: 2,
  of: 3,
  ...more,
});

const rectangle = (width: number, height: number): Entity => ({
  kind: 'poly',
  layer: LAYERS.OUTLINE,
  points: [
    [0, 0],
    [width, 0],
    [width, height],
    [0, height],
  ],
  closed: true,
});

const plan = (width: number, height: number): SheetPlan => ({
  name: 'box',
  title: 'Box',
  draw: ({ style, area }) => centeredIn(block([rectangle(width, height)], style), area),
});

describe('a sheet', () => {
  // Free on A3: 420 - 20 - 10 - 2 x 5 wide, 297 - 2 x 10 - 30 - 2 x 5 high.
  test.each([
    [380, 237, 'A3', 1],
    [381, 237, 'A3', 2],
    [380, 238, 'A3', 2],
    [1900, 1185, 'A3', 5],
    [1901, 100, 'A3', 10],
    [100, 2375, 'A3', 20],
  ] as const)('of %d x %d mm is drawn at the largest scale that fits', (width, height, paper, scale) => {
    expect(makeSheet(plan(width, height), heading(paper)).scale).toBe(scale);
  });

  test('takes the next larger paper when it fits at no scale, and says so when there is none', () => {
    const only = { ...plan(1000, 300), scales: [2] };
    expect(makeSheet(only, heading('A3')).paper.name).toBe('A2');
    expect(() => makeSheet({ ...only, scales: [1] }, heading('A3'))).toThrow(
      'sheet "box" fits at no scale on A3, A2, A1',
    );
  });

  test('stands on paper within its frame, model in true mm', () => {
    const { drawing, scale } = makeSheet(plan(1900, 500), heading('A3'));
    const outline = drawing.entities[0]!;
    expect(outline.kind === 'poly' && outline.points[1]![0] - outline.points[0]![0]).toBeCloseTo(1900, 9);
    const [frame] = place(drawing, [0, 0]).filter(({ layer }) => layer.name === 'FRAME');
    expect(scale).toBe(5);
    const points =
      frame?.kind === 'poly'
        ? frame.points.map(([x, y]) => [Math.round(x * 1e6) / 1e6, Math.round(y * 1e6) / 1e6])
        : [];
    expect(points).toEqual([
      [20, 10],
      [410, 10],
      [410, 287],
      [20, 287],
    ]);
  });

  const LONG =
    'A piece with a name that goes on and on, as names do when a committee has to agree on what it orders, twice over';

  test.each(['A', 'B', 'A4', 'A3'] as const)('on %s: no field of the title block runs over, however long', (paper) => {
    const more = {
      owner: LONG,
      piece: `${LONG} ${LONG}`,
      number: LONG,
      revision: LONG,
      lengths: 'both',
      of: 128,
    } as const;
    const warning = `made in spite of "change it": ${LONG}, ${LONG}`;
    const { drawing } = makeSheet({ ...plan(100, 100), title: LONG }, heading(paper, { ...more, warning }));
    expect(collisions(drawing)).toEqual([]);
    const words = drawing.entities.flatMap((e) => (e.kind === 'text' && e.layer.name === 'WARNING' ? [e.text] : []));
    expect(words.join(' ')).toBe(warning);
  });

  test('numbers and names itself', () => {
    const texts = makeSheet(plan(100, 100), heading('B', { projection: 'first' })).drawing.entities.flatMap((e) =>
      e.kind === 'text' ? [e.text] : [],
    );
    for (const text of ['Workshop at the mill', 'Table', 'Box', '12', 'A', '2026-11-25', '2 of 3', 'mm'])
      expect(texts).toContain(text);
    expect(texts.filter((text) => /^1:\d/.test(text))).toHaveLength(1);
  });

  test('names no scale where nothing is drawn to one', () => {
    const { drawing } = makeSheet({ ...plan(100, 100), unscaled: true }, heading('B'));
    const texts = drawing.entities.flatMap((e) => (e.kind === 'text' ? [e.text] : []));
    expect(texts).toContain('none');
    expect(texts.filter((text) => /^1:\d/.test(text))).toEqual([]);
  });
});

test('scales as a rule for feet and inches calls them', () => {
  expect([1, 2, 4, 8, 12, 16, 24, 32, 48, 96].map((scale) => scaleText(scale, 'us'))).toEqual([
    '1:1, full size',
    '1:2',
    '1:4 (3" to the foot)',
    '1:8 (1 1/2" to the foot)',
    '1:12 (1" to the foot)',
    '1:16 (3/4" to the foot)',
    '1:24 (1/2" to the foot)',
    '1:32 (3/8" to the foot)',
    '1:48 (1/4" to the foot)',
    '1:96 (1/8" to the foot)',
  ]);
  expect(scaleText(10, 'iso')).toBe('1:10');
});

test('the symbol shows the narrow end from the left: that view stands left in third angle, right in first', () => {
  for (const [angle, side] of [
    ['third', -1],
    ['first', 1],
  ] as const) {
    const marks = projectionSymbol(angle, [0, 0], 10);
    const circles = marks.flatMap((m) => (m.kind === 'circle' ? [m] : []));
    const cone = marks.find((m) => m.kind === 'poly' && m.closed);
    expect(circles.map(({ radius: r }) => r)).toEqual([5, 2.5]);
    expect(Math.sign(circles[0]!.center[0])).toBe(side);
    const [[x0, y0], [x1, y1]] =
      cone?.kind === 'poly' ? (cone.points as unknown as [Pt, Pt]) : [[0, 0] as Pt, [0, 0] as Pt];
    expect(x0).toBeLessThan(x1);
    expect(Math.abs(y0)).toBeLessThan(Math.abs(y1));
  }
});

test('a dimension that is moved measures the same and looks the same', () => {
  const dims: Dim[] = [
    linear([0, 0], [90, 2.5], 0, [0, 20]),
    { ...linear([0, 0], [90, 2.5], 30, [0, 20]), placement: { text: [40, 60] } },
    aligned([0, 0], [90, 2.5], [0, 20]),
    radius([10, 10], [13, 14]),
    diameter([10, 10], [13, 14]),
    angular(
      [
        [0, 0],
        [50, 0],
      ],
      [
        [0, 0],
        [50, 50],
      ],
      [40, 10],
    ),
  ];
  for (const dim of dims) {
    const before = explode(dim, DEFAULT_STYLE);
    const after = explode(move(dim, [1000, -300]) as Dim, DEFAULT_STYLE);
    expect(after.value).toBeCloseTo(before.value, 9);
    expect(after.text).toBe(before.text);
    const back = after.entities.map((mark) => move(mark, [-1000, 300]));
    expect(back.map(rounded)).toEqual(before.entities.map(rounded));
  }
});

const rounded = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (_, v) => (typeof v === 'number' ? Math.round(v * 1e6) / 1e6 + 0 : v)));

test('lines are never broken within a length, as long as it fits', () => {
  const text = 'at least 27 1/4" for knees, 690 mm or so, and 12 lb';
  for (let width = 22; width < 60; width++) {
    const lines = linesWithin(text, width, 2.5);
    expect(lines.join(' ')).toBe(text);
    expect(lines.some((line) => /(^| )27$|690$|12$/.test(line))).toBe(false);
  }
});
