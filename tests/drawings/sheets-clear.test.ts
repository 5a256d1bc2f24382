import { describe, expect, test } from 'vitest';
import { sheetsOf } from '../../lib/build/output-drawings.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import type { Pt } from '../../lib/drawing/entity.ts';
import { flatten } from '../../lib/drawing/flatten.ts';
import type { SheetsGiven } from '../../lib/shop/sheets.ts';
import { collisions } from './collisions.ts';
import { type DesignName, jobOf, NAMES } from './sheet-jobs.ts';

const SETS: Readonly<Record<string, SheetsGiven>> = {
  usual: {},
  'letter paper': { paper: 'A', owner: 'Workshop at the mill, joiners since the flood' },
  A4: { paper: 'A4' },
  'large, both systems, other angle': { paper: 'C', lengths: 'both', projection: 'first' },
  'A2, third angle': { paper: 'A2', projection: 'third', lengths: 'in' },
};

const clear = (name: DesignName, sheets: SheetsGiven, sets: readonly string[] = [], checked?: 'checked'): void => {
  for (const { name: sheet, drawing } of sheetsOf(jobOf(name, sets, { sheets }, checked))) {
    expect(collisions(drawing), `${name}, ${sheet}`).toEqual([]);
  }
};

describe('no lettering of a sheet stands on another, or on a line', () => {
  for (const name of NAMES) {
    for (const [words, given] of Object.entries(SETS)) test(`${name}, ${words}`, () => clear(name, given));
  }

  test('nor when the piece is made in spite of "change it"', () =>
    clear('reading-table', { paper: 'A' }, ['top.edgeThickness=12 mm'], 'checked'));

  test('nor on small and large tables, wide and narrow boards', () => {
    clear('reading-table', {}, [
      'top.length=48 in',
      'top.width=30 in',
      'top.strips=6',
      'bearer.length=22 in',
      'foot.length=22 in',
      'post.spacing=14 in',
    ]);
    clear('reading-table', {}, ['top.strips=12']);
    clear('reading-table', {}, ['edgeJoint.tenons=false']);
    clear('meeting-table', {}, ['top.length=3200 mm']);
  });

  test('a planted text is seen', () => {
    const [sheet] = sheetsOf(jobOf('reading-stool'));
    const { drawing } = sheet!;
    const line = flatten(drawing).find((m) => m.kind === 'poly');
    const [a, b] = line?.kind === 'poly' ? line.points : [];
    const at: Pt = [(a![0] + b![0]) / 2, (a![1] + b![1]) / 2];
    const planted: Drawing = {
      ...drawing,
      entities: [
        ...drawing.entities,
        { kind: 'text', layer: line!.layer, text: 'planted', at, height: 3, align: 'center', valign: 'middle' },
      ],
    };
    expect(collisions(planted).length).toBeGreaterThan(0);
  });
});
