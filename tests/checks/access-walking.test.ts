import { describe, expect, it } from 'vitest';
import { access } from '../../lib/derive/checks/access.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { changeOf, contextOf } from './site-context.ts';

const walking = (room: { length?: string; width?: string }, changes = {}): Finding[] =>
  access.run(contextOf('reading-table', changes, { site: { room } })).filter((f) => f.check === 'walking room');

describe('walking room', () => {
  it('is measured from the edges where people sit to the walls', () => {
    const [sides, ends] = walking({ length: '17 ft', width: '11 ft' });
    expect(sides).toMatchObject({ verdict: 'ok', limit: 36 * 25.4 });
    expect(sides!.value! / 25.4).toBeCloseTo(46, 9);
    expect(sides!.because).toBe(
      'behind the long sides there is 46 in to the wall: enough to walk past somebody seated (44 in)',
    );
    expect(ends!.because).toBe(
      'behind the ends there is 60 in to the wall: enough to walk past somebody seated (44 in)',
    );
    expect(sides!.assumptions).toEqual(['the table stands in the middle of the room, along it']);
  });

  it.each([
    ['9 ft 6 in', 'ok', '37 in to the wall: enough to edge past somebody seated (36 in), not to walk past (44 in)'],
    ['9 ft', 'look again', '34 in to the wall: enough to sit (32 in), not to edge past (36 in)'],
    ['8 ft', 'change it', '28 in to the wall: a seated person takes 32 in'],
    ['3 ft', 'change it', 'no room at all: a seated person takes 32 in'],
  ])('in a room %s wide: %s', (width, verdict, text) => {
    const [sides] = walking({ length: '17 ft', width });
    expect(sides).toMatchObject({ verdict, because: `behind the long sides there is ${text}` });
  });

  it('is mended by a smaller table or a larger room', () => {
    const room = { length: '12 ft', width: '11 ft' };
    const ends = walking(room)[1]!;
    expect(ends.verdict).toBe('change it');
    expect(ends.fixes).toEqual(['top.length 72 in brings 36 in behind the ends', 'a room with a length of 156 in']);
    expect(walking(room, changeOf(ends.fixes[0])).find((f) => f.because.startsWith('behind the ends'))?.verdict).toBe(
      'ok',
    );
    expect(walking({ ...room, length: '156 in' })[1]!.verdict).toBe('ok');
  });

  it('needs the room', () => {
    expect(walking({}).map((f) => [f.verdict, f.because])).toEqual([
      ['not checked', 'not checked: needs the width of the room (site.room.width)'],
      ['not checked', 'not checked: needs the length of the room (site.room.length)'],
    ]);
  });
});
