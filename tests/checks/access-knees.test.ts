import { describe, expect, it } from 'vitest';
import { access } from '../../lib/derive/checks/access.ts';
import type { CheckContext } from '../../lib/derive/checks/check.ts';
import { lowestOver } from '../../lib/derive/checks/room-under.ts';
import { seatMap } from '../../lib/derive/checks/seat-map.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { changeOf, contextOf } from './site-context.ts';

const INCH = 25.4;
const named = (context: CheckContext, name: string): Finding[] =>
  access.run(context).filter((finding) => finding.check === name);

describe('knee room', () => {
  it('is that of the real underside where knees come to, on the sides and at the ends', () => {
    const [sides, ends] = named(contextOf('reading-table'), 'knee room');
    expect(sides).toMatchObject({ verdict: 'ok', part: 'top', unit: 'mm', fixes: [] });
    expect(sides!.value! / INCH).toBeCloseTo(27.7, 9);
    expect(sides!.limit! / INCH).toBeCloseTo(24, 9);
    expect(sides!.because).toBe(
      'on the long sides knees have 27 11/16 in over the floor under top T, 12 in from the edge; that leaves 10 3/16 in over a seat of 17 1/2 in, and thighs want 6 1/2 in',
    );
    expect(ends!.value! / INCH).toBeCloseTo(27.25, 9);
    expect(ends!.because).toBe(
      'at the ends knees have 27 1/4 in over the floor under top T, 12 in from the edge; that leaves 9 3/4 in over a seat of 17 1/2 in, and thighs want 6 1/2 in',
    );
  });

  it('follows the depth of a knee place down the taper', () => {
    // Height less t(x), t = 2.25 - 0.05625 x: at 12, 15 and 19 in from the edge.
    for (const [knee, height] of [
      ['12 in', 27.7],
      ['15 in', 27.53125],
      ['19 in', 27.30625],
    ] as const) {
      const context = contextOf('reading-table', {}, { site: { seating: { knee, ends: false } } });
      expect(seatMap(context)!.places[0]!.kneeHeight / INCH).toBeCloseTo(height, 9);
    }
  });

  it('counts what hangs under the top', () => {
    const [sides] = named(contextOf('study-table'), 'knee room');
    expect(sides!.part).toMatch(/^frame-[ab]\/cleat$/);
    expect(sides!.value!).toBeLessThan(seatMap(contextOf('study-table'))!.room.box.max[2] - 50.8);
  });

  it('fails over a high seat, and its fix makes room', () => {
    const site = { seating: { seatHeight: '22 in' } };
    const [sides] = named(contextOf('reading-table', {}, { site }), 'knee room');
    expect(sides).toMatchObject({ verdict: 'change it' });
    expect(sides!.because).toBe(
      'on the long sides knees have 27 11/16 in over the floor under top T, 12 in from the edge; that leaves 5 11/16 in over a seat of 22 in, and thighs want 6 1/2 in',
    );
    expect(sides!.fixes).toEqual(['table.height 30 5/16 in brings 28 1/2 in']);
    const [mended] = named(contextOf('reading-table', changeOf(sides!.fixes[0]), { site }), 'knee room');
    expect(mended!.verdict).toBe('ok');
    const [close] = named(
      contextOf('reading-table', {}, { site: { seating: { seatHeight: '21 1/2 in' } } }),
      'knee room',
    );
    expect(close!.verdict).toBe('look again');
  });

  it('speaks metric in a metric shop', () => {
    const [sides] = named(contextOf('meeting-table'), 'knee room');
    expect(sides!.because).toBe(
      'on the long sides knees have 698 mm over the floor under top T, 304.8 mm from the edge; that leaves 253.5 mm over a seat of 444.5 mm, and thighs want 165.1 mm',
    );
  });
});

describe('foot room', () => {
  it('tells of a low piece along a side, with the way it must go when no parameter does it alone', () => {
    const [found] = named(contextOf('meeting-table'), 'foot room');
    expect(found).toMatchObject({ verdict: 'look again', value: 150, limit: 304.8 });
    expect(found!.because).toBe(
      'on the long sides feet meet stretcher S2 150 mm from the edge; a place is 304.8 mm deep',
    );
    expect(found!.fixes).toEqual(['move it 154.8 mm towards the middle']);
  });

  it('is there once the fix is applied', () => {
    const low = {
      'stretcher.count': '2',
      'stretcher.to': 'posts',
      'stretcher.height': '6 in',
      'frameJoint.tenonDepth': '1 1/4 in',
    };
    const [found] = named(contextOf('reading-table', low), 'foot room');
    expect(found!.because).toBe(
      'on the long sides feet meet stretcher S2 9 1/4 in from the edge; a place is 12 in deep',
    );
    expect(found!.fixes[0]).toBe('post.spacing 14 1/2 in brings 12 in for feet');
    expect(named(contextOf('reading-table', { ...low, ...changeOf(found!.fixes[0]) }), 'foot room')).toEqual([]);
  });

  it('says nothing where nothing low stands', () => {
    expect(named(contextOf('reading-table'), 'foot room')).toEqual([]);
  });
});

describe('the lowest of a surface over a rectangle', () => {
  const ridge: Surface = {
    take: 'highest',
    planes: [
      { name: 'left', a: 0, b: 0.1, c: 700 },
      { name: 'right', a: 0, b: -0.1, c: 700 },
    ],
  };

  it('is at a corner beside the ridge, and on the ridge when that lies inside', () => {
    expect(
      lowestOver(ridge, [
        [0, 500],
        [300, 500],
        [300, 200],
        [0, 200],
      ]),
    ).toBeCloseTo(720, 9);
    expect(
      lowestOver(ridge, [
        [0, 500],
        [300, 500],
        [300, -100],
        [0, -100],
      ]),
    ).toBeCloseTo(700, 9);
  });
});
