import { describe, expect, it } from 'vitest';
import { access } from '../../lib/derive/checks/access.ts';
import type { CheckContext } from '../../lib/derive/checks/check.ts';
import { type SeatMap, seatMap } from '../../lib/derive/checks/seat-map.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { DESIGN_NAMES } from '../written.ts';
import { changeOf, contextOf } from './site-context.ts';

const INCH = 25.4;
const mapOf = (context: CheckContext): SeatMap => seatMap(context)!;
const counts = ({ edges }: SeatMap): number[] => edges.map((e) => e.places.length);
const seats = (context: CheckContext): Finding => access.run(context).find((f) => f.check === 'seats')!;

describe('the seat map of the reading-room table, against the worked example', () => {
  const map = mapOf(contextOf('reading-table'));
  const [left] = map.edges;
  const between = left.stretches.find((s) => !s.outside)!;

  it('has 53.25 in clear between frames 56 in apart, so two readers a side get 26.6 in; three would get 17.8', () => {
    const [a, b] = ['frame-a/post-1', 'frame-b/post-1'].map((id) => map.room.obstacles.find((o) => o.part.id === id)!);
    const middle = ({ box }: typeof a & object): number => (box.min[0] + box.max[0]) / 2;
    expect((middle(b!) - middle(a!)) / INCH).toBeCloseTo(56, 9);
    expect(between.clear / INCH).toBeCloseTo(53.25, 9);
    expect(between.count).toBe(2);
    expect(between.width / INCH).toBeCloseTo(26.625, 9);
    expect(between.clear / 3 / INCH).toBeCloseTo(17.75, 9);
  });

  it('seats six: four on the sides, one at each end, none outside the frames', () => {
    expect(counts(map)).toEqual([2, 2, 1, 1]);
    expect(map.places).toHaveLength(6);
    expect(map.places.every((p) => !p.outside && p.verdict === 'ok')).toBe(true);
  });

  it('has knees at 27.70 in, 12 in from the long edge, and the middles of places 26.6 in apart', () => {
    const [first, second] = left.places;
    expect(first!.kneeHeight / INCH).toBeCloseTo(27.7, 9);
    expect(first!.kneeUnder).toBe('top');
    expect((second!.middle[0] - first!.middle[0]) / INCH).toBeCloseTo(26.625, 9);
    expect(first!.middle[1] / INCH).toBeCloseTo(20, 9);
    expect(first!.knees[1] / INCH).toBeCloseTo(8, 9);
  });

  it('has 12.625 in at an end before the posts', () => {
    const end = map.edges[2].places[0]!;
    expect(end.legDepth / INCH).toBeCloseTo(12.625, 9);
    expect(end.legsMeet).toMatch(/^frame-a\/post-/);
  });

  it('takes three a side with frames 6.125 in from the ends, and loses the places at the ends', () => {
    const moved = mapOf(contextOf('reading-table', { 'frame.inset': '6 1/8 in' }));
    expect(counts(moved)).toEqual([3, 3, 0, 0]);
    const wide = mapOf(contextOf('reading-table', { 'frame.inset': '6 3/16 in' }));
    expect(counts(wide)).toEqual([2, 2, 0, 0]);
  });
});

describe('the seat map', () => {
  it('uses the corners once: places outside the frames or one at the end, whichever seats more', () => {
    // 30 in from the end to the posts: 30 in of side, or 18 in of it and a place at the end.
    const far = contextOf('reading-table', { 'top.length': '10 ft', 'frame.inset': '31 3/8 in' });
    const map = mapOf(far);
    expect(counts(map)).toEqual([4, 4, 0, 0]);
    expect(map.edges[0].stretches.map((s) => [s.outside, s.count])).toEqual([
      [true, 1],
      [false, 2],
      [true, 1],
    ]);
  });

  it('leaves the ends out when they are not wanted', () => {
    expect(counts(mapOf(contextOf('reading-table', {}, { site: { seating: { ends: false } } })))).toEqual([2, 2, 0, 0]);
  });

  it('uses one side of a top too narrow for knees from both', () => {
    const map = mapOf(contextOf('meeting-table', {}, { site: { seating: { knee: '20 in' } } }));
    expect(map.oneSided).toBe(true);
    expect(counts(map)).toEqual([2, 0, 0, 0]);
  });

  it('never lets places of one edge overlap or leave the top', () => {
    for (const name of DESIGN_NAMES) {
      const map = seatMap(contextOf(name));
      for (const { edge, stretches } of map?.edges ?? []) {
        const ends = stretches.flatMap((s) => s.span);
        expect(ends).toEqual([...ends].sort((a, b) => a - b));
        expect(Math.min(0, ...ends)).toBe(0);
        expect(Math.max(edge.length, ...ends)).toBe(edge.length);
      }
    }
  });
});

/** Stretchers from post to post, at the height of shins all along both sides. */
const SHINS = { 'stretcher.count': '2', 'stretcher.to': 'posts', 'frameJoint.tenonDepth': '1 1/4 in' };

describe('what it says of seats', () => {
  const layout =
    '2 on each long side at 26 5/8 in each; 1 at each end at 40 in; 3 on a long side would get 17 3/4 in each, and 23 in is the least';

  it('counts what is wanted against what fits', () => {
    const found = seats(contextOf('reading-table'));
    expect(found).toMatchObject({ verdict: 'ok', value: 6, limit: 6, unit: 'places', fixes: [] });
    expect(found.because).toBe(`6 places are wanted and 6 fit: ${layout}`);
  });

  it('says how many there are when nobody said how many are wanted', () => {
    expect(seats(contextOf('reading-table', {}, { site: {} })).because).toBe(`the table seats 6: ${layout}`);
    expect(seats(contextOf('meeting-table')).because).toBe(
      'the table seats 6: 2 on each long side at 785 mm each; 1 at each end at 960 mm; 3 on a long side would get 523.3 mm each, and 584.2 mm is the least',
    );
    expect(seats(contextOf('study-table')).because).toBe(
      'the table seats 4: 2 on each long side at 23 1/8 in each; 3 on a long side would get 15 13/32 in each, and 23 in is the least; none at the ends: 8 1/8 in before panel leg L1, and a place takes 12 in',
    );
    expect(seats(contextOf('reading-stool')).because).toBe('it has no table top to sit at');
  });

  it('fails when more are wanted, and its fix seats them', () => {
    const site = { seating: { places: 8 } };
    const found = seats(contextOf('reading-table', {}, { site }));
    expect(found).toMatchObject({ verdict: 'change it', value: 6, limit: 8 });
    expect(found.because).toBe(`8 places are wanted and 6 fit: ${layout}`);
    expect(found.fixes).toEqual(['top.length 99 3/4 in brings 8 places']);
    const mended = seats(contextOf('reading-table', changeOf(found.fixes[0]), { site }));
    expect(mended).toMatchObject({ verdict: 'ok', value: 8 });
  });

  it('looks again at a table where nobody can sit', () => {
    const site = { seating: { ends: false } };
    const found = seats(contextOf('reading-table', SHINS, { site }));
    expect(found).toMatchObject({ verdict: 'look again', value: 0 });
    expect(found.because).toBe(
      'nobody can sit at it: on a long side 9 1/4 in before stretcher S2, and a place takes 12 in',
    );
  });
});

describe('sides with something in the way of legs', () => {
  const blocked = (context: CheckContext): Finding | undefined =>
    access.run(context).find((f) => f.check === 'knee depth');

  it('are told, and the fix makes room', () => {
    const found = blocked(contextOf('reading-table', SHINS))!;
    expect(found.verdict).toBe('look again');
    expect(found.because).toMatchInlineSnapshot(
      `"nobody can sit on the long sides: 9 1/4 in before stretcher S2, and a place takes 12 in"`,
    );
    expect(found.fixes).toMatchInlineSnapshot(`
      [
        "post.spacing 14 1/2 in brings 12 in for knees",
        "top.width 45 1/2 in brings 12 in for knees",
      ]
    `);
    const mended = contextOf('reading-table', { ...SHINS, ...changeOf(found.fixes[0]) });
    expect(blocked(mended)).toBeUndefined();
    expect(counts(mapOf(mended)).slice(0, 2)).toEqual([2, 2]);
  });
});
