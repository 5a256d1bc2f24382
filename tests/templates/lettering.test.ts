import { describe, expect, it } from 'vitest';
import { templates } from '../../lib/derive/templates/templates.ts';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { type Changes, type DesignName, jobOf } from '../written.ts';
import { CASES } from './cases.ts';
import { crossings, upsideDown } from './crossings.ts';

/** Designs that crowd their templates: many screws, small and slender pieces, little height under the V. */
const CROWDED: readonly (readonly [DesignName, Changes])[] = [
  ['reading-table', { 'fixing.perSide': '3' }],
  ['reading-table', { 'bearer.endRound': '0 in' }],
  ['reading-table', { 'bearer.endRound': '2 in', 'post.spacing': '18 in', 'fixing.fromEnds': '3 1/2 in' }],
  [
    'reading-table',
    { 'frame.kind': 'posts', 'stretcher.count': '2', 'stretcher.to': 'posts', 'frameJoint.tenonDepth': '1 in' },
  ],
  ['reading-table', { 'frame.kind': 'panel', 'fixing.perSide': '3' }],
  ['study-table', { 'cleat.depth': '2 1/2 in' }],
  ['meeting-table', { 'fixing.gauge': '14', 'fixing.washer': '18 mm' }],
];

const ALL = [...CASES.map((one) => [one.design, one.changes] as const), ...CROWDED];

const drawingsOf = (name: DesignName, changes: Changes): Drawing[] => {
  const { assembly, design } = jobOf(name, changes);
  return templates(assembly, design).map(({ drawing }) => drawing);
};

describe('the lettering of every template', () => {
  it.each(ALL)('%s %j: meets no other lettering and no line', (name, changes) => {
    const drawings = drawingsOf(name, changes);
    expect(drawings.length).toBeGreaterThan(0);
    for (const drawing of drawings) expect(crossings(drawing), drawing.title).toEqual([]);
  });

  it.each(ALL)('%s %j: reads from the bottom or from the right', (name, changes) => {
    for (const drawing of drawingsOf(name, changes)) expect(upsideDown(drawing), drawing.title).toEqual([]);
  });

  it('is compared by a measure that sees collisions', () => {
    const [drawing] = drawingsOf('reading-table', {});
    const text = (at: readonly [number, number], rotation = 0) =>
      ({ kind: 'text', layer: LAYERS.TEXT, text: 'over it', at, height: 3.5, rotation }) as const;
    const spoiled = (...texts: ReturnType<typeof text>[]): Drawing => ({
      title: '',
      style: DEFAULT_STYLE,
      entities: [...drawing!.entities, ...texts],
    });
    expect(crossings(spoiled(text([200, -1])))).toContain('"over it" over OUTLINE');
    expect(crossings(spoiled(text([300, -300]), text([305, -303])))).toEqual(['"over it" over "over it"']);
    expect(crossings(spoiled(text([300, -300]), text([302, -302], 45)))).toEqual(['"over it" over "over it"']);
    expect(crossings(spoiled(text([300, -300]), text([300, -306])))).toEqual([]);
    expect(upsideDown(spoiled(text([300, -300], 180)))).toEqual(['"over it" is turned by 180']);
    expect(upsideDown(spoiled(text([300, -300], 90)))).toEqual([]);
    expect(upsideDown(spoiled(text([300, -300], 270)))).toEqual(['"over it" is turned by 270']);
  });
});
