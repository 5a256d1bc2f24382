import { describe, expect, it } from 'vitest';
import { derivedNumbers } from '../../lib/build/derived.ts';
import { tableModel } from '../../lib/derive/checks/table-model.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { top } from '../../lib/parts/top.ts';
import { type Changes, type DesignName, jobOf } from '../written.ts';
import { fourLegs, postFrames } from './hand-bases.ts';
import { boards, flat } from './trial-pieces.ts';
import { GOLDEN, LIGHTER, tried } from './tried.ts';

const modelOf = (name: DesignName, changes: Changes = {}) => tableModel(tried(name, changes).assembly)!;

const stretches = (assembly: Assembly) =>
  tableModel(assembly)!.bearings.map(({ part, x, from, to, along, screwed }) => ({
    part,
    at: along ?? x,
    across: [from, to],
    screwed,
  }));

describe('what the checks see of the reading-room table', () => {
  const model = modelOf('reading-table', GOLDEN);

  // Worked values of the reading-room table; its pads are 1 mm thick here, and the feet as much lower.
  it('is as heavy as worked: 52.0 kg of top, 20.7 of base, 72.7 in all', () => {
    expect(model.topMass.mass / 52.03221).toBeCloseTo(1, 6);
    expect(Math.abs(model.baseMass.mass / 20.67086 - 1)).toBeLessThan(LIGHTER);
    expect(Math.abs(model.mass.mass / 72.70306 - 1)).toBeLessThan(LIGHTER);
  });

  it('balances over its middle, with the top as high as a wedge has its center: 22.225 mm below the show face', () => {
    for (const { center } of [model.topMass, model.baseMass, model.mass]) {
      expect(center[0]).toBeCloseTo(1066.8, 6);
      expect(center[1]).toBeCloseTo(0, 6);
    }
    expect(model.topMass.center[2]).toBeCloseTo(749.3 - 22.225, 6);
  });

  it('lies on two bearers, screwed down, and stands on four pads', () => {
    expect(model.bearings).toEqual([
      { part: 'frame-a/bearer', x: 355.6, from: -381, to: 381, screwed: true },
      { part: 'frame-b/bearer', x: 1778, from: -381, to: 381, screwed: true },
    ]);
    const expected = [355.6, 1778].flatMap((x) => [-355.6, 355.6].map((y) => [x, y]));
    expect(model.contacts).toHaveLength(4);
    for (const [x, y] of expected) {
      expect(model.contacts.some((c) => Math.hypot(c[0] - x!, c[1] - y!) < 1e-6)).toBe(true);
    }
  });

  it('is 57.15 mm thick on the center line and 28.575 at the long edges', () => {
    for (const x of [0, 1000, 2133.6]) {
      expect(model.thickness(x, 0)).toBeCloseTo(57.15, 9);
      expect(model.thickness(x, 508)).toBeCloseTo(28.575, 9);
      expect(model.thickness(x, -508)).toBeCloseTo(28.575, 9);
    }
  });
});

describe('the model of a table', () => {
  it('weighs what the built pieces weigh, but for the play of mortises and worked edges', () => {
    for (const name of ['reading-table', 'meeting-table', 'study-table'] as const) {
      expect(modelOf(name).mass.mass / derivedNumbers(jobOf(name)).mass).toBeCloseTo(1, 2);
    }
  });

  it('lies on posts that touch it and on the rail between them that is screwed', () => {
    expect(stretches(tried('meeting-table').assembly).slice(0, 3)).toEqual([
      { part: 'frame-a/post-1', at: 380, across: [-355, -265], screwed: false },
      { part: 'frame-a/upper-rail', at: 380, across: [-265, 265], screwed: true },
      { part: 'frame-a/post-2', at: 380, across: [265, 355], screwed: false },
    ]);
  });

  it('lies on a panel leg that touches it and on the cleat behind it that is screwed', () => {
    expect(modelOf('study-table').bearings.map(({ part, screwed }) => [part, screwed])).toEqual([
      ['frame-a/panel', false],
      ['frame-a/cleat', true],
      ['frame-b/cleat', true],
      ['frame-b/panel', false],
    ]);
  });

  it('lies on aprons along the table from end to end', () => {
    const found = stretches(fourLegs());
    expect(found.filter((s) => s.part.startsWith('long'))).toEqual([
      { part: 'long-1', at: [110, 1090], across: [-281, -259], screwed: true },
      { part: 'long-2', at: [110, 1090], across: [259, 281], screwed: true },
    ]);
    expect(found.filter((s) => s.part.startsWith('short')).map((s) => s.at)).toEqual([80, 1120]);
    expect(found.filter((s) => s.part.startsWith('leg'))).toHaveLength(4);
  });

  it('stands on its lowest corners when it has no pads', () => {
    const { contacts } = tableModel(fourLegs())!;
    expect(contacts).toHaveLength(16);
    expect(new Set(contacts.map(([x]) => Math.round(x)))).toEqual(new Set([50, 110, 1090, 1150]));
  });

  it('has its top where it is highest, whatever panels lie below', () => {
    const assembly = postFrames();
    const shelf = top({
      id: 'a-shelf',
      mark: 'Z',
      wood: 'cherry',
      length: 900,
      width: 300,
      thickness: 20,
      edgeThickness: 20,
      members: [],
    });
    const place = { part: shelf.id, frame: { origin: [350, 0, 300], x: [1, 0, 0], y: [0, -1, 0] } } as const;
    const withShelf: Assembly = {
      ...assembly,
      parts: [shelf, ...assembly.parts],
      places: [place, ...assembly.places],
    };
    expect(tableModel(withShelf)!.top.id).toBe('top');
    expect(tableModel(withShelf)!.baseMass.mass).toBeGreaterThan(tableModel(assembly)!.baseMass.mass);
  });

  it('is none for a piece without a panel, and for a panel that lies on nothing', () => {
    expect(tableModel(boards({ id: 'board', at: flat(0, 0, 0) }))).toBeUndefined();
    expect(tableModel(tried('reading-stool').assembly)).toBeUndefined();
    const assembly = postFrames();
    const raised: Assembly = {
      ...assembly,
      places: assembly.places.map((p) =>
        p.part === 'top' ? { ...p, frame: { ...p.frame, origin: [0, 0, 900] as const } } : p,
      ),
      fixings: [],
    };
    expect(tableModel(raised)).toBeUndefined();
  });
});
