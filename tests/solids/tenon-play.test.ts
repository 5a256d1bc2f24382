import { describe, expect, test } from 'vitest';
import { toOuter } from '../../lib/geometry/frame.ts';
import type { TrestleValues } from '../../lib/tables/trestle/values.ts';
import { jobOf } from '../written.ts';
import { withMoved } from './assembled.ts';
import { type Room, roomsOf } from './tenon-play.ts';

// Source: the play that the parameters say, measured again on the corners of the placed solids.

interface Play {
  readonly end: number;
  readonly floor: number;
}

/** Halves that have another room than: none on the tight side, `end` at both ends on the loose one, `floor` below. */
function wrong(rooms: readonly Room[], said: (tenon: string) => Play): Room[] {
  return rooms.filter(({ tenon, side, ends, cheeks, floor }) => {
    const play = said(tenon);
    const end = side === 0 ? 0 : play.end;
    const differences = [...ends.map((e) => e - end), ...cheeks, floor - play.floor];
    return differences.some((d) => !(Math.abs(d) < 1e-9));
  });
}

describe.each(['reading-table', 'meeting-table', 'study-table'] as const)('%s', (name) => {
  const { assembly, values } = jobOf(name);
  const { edgeJoint, frameJoint } = values as unknown as TrestleValues;
  const said = (tenon: string): Play =>
    tenon.startsWith('top/')
      ? { end: edgeJoint.endPlay, floor: edgeJoint.depthPlay }
      : { end: frameJoint.endPlay, floor: frameJoint.depthPlay };

  test('every tenon has the play that is said, and no other', () => {
    const rooms = roomsOf(assembly);
    expect(rooms.length).toBeGreaterThan(40);
    expect(wrong(rooms, said)).toEqual([]);
  });

  test('a tenon that is off by a thousandth of a millimeter is seen', () => {
    const id = assembly.joints.find((joint) => joint.tenons.length > 0)!.tenons[0]!;
    for (const by of [
      [0.001, 0, 0],
      [0, 0.001, 0],
      [0, 0, 0.001],
    ] as const) {
      const off = withMoved(assembly, id, (frame) => ({ ...frame, origin: toOuter(frame, by) }));
      expect(wrong(roomsOf(off), said).map((room) => room.tenon)).toEqual([id, id]);
    }
  });
});

test('reading-stool: the play of its joints is written in the design', () => {
  const rooms = roomsOf(jobOf('reading-stool').assembly);
  expect(rooms).toHaveLength(12);
  expect(wrong(rooms, () => ({ end: 0.5, floor: 1.5 }))).toEqual([]);
});
