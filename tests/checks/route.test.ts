import { describe, expect, it } from 'vitest';
import { packedLoads } from '../../lib/derive/checks/packed-loads.ts';
import { route } from '../../lib/derive/checks/route.ts';
import type { Finding } from '../../lib/model/finding.ts';
import type { SiteGiven } from '../../lib/shop/site.ts';
import type { Changes, DesignName } from '../written.ts';
import { changeOf, contextOf } from './site-context.ts';

type Route = NonNullable<SiteGiven['route']>;

const WIDE: Route = {
  corridor: '48 in',
  corridorAfter: '42 in',
  doorWidth: '36 in',
  doorHeight: '80 in',
  ceiling: '8 ft',
};

const ways = (given: Route, changes: Changes = {}, name: DesignName = 'reading-table'): Finding[] =>
  route.run(contextOf(name, changes, { site: { route: given } }));

const find = (findings: readonly Finding[], what: string, load: string): Finding =>
  findings.find((f) => f.check === `way in, ${what}` && f.because.startsWith(`packed ${load}`))!;

const TOP = 'packed top T (85 1/2 in x 41 1/2 in x 3 3/4 in)';
const BASE = 'packed base (60 1/4 in x 31 1/2 in x 29 19/32 in)';

describe('what is carried', () => {
  it('is the top and the base, each in its blankets', () => {
    const loads = packedLoads(contextOf('reading-table').assembly, 0);
    expect(loads.map((l) => [l.kind, l.name])).toEqual([
      ['top', 'top T'],
      ['base', 'base'],
    ]);
    expect(loads[0]!.sides.map((mm) => mm / 25.4)).toEqual([84, 40, 2.25].map((n) => expect.closeTo(n, 9)));
    // 56 in between frames and a post's thickness; feet 30 in long; up to the horns of the bearers.
    expect(loads[1]!.sides.map((mm) => mm / 25.4)).toEqual([58.75, 30, 28.09375].map((n) => expect.closeTo(n, 9)));
  });

  it('is all at once where nothing comes off', () => {
    expect(packedLoads(contextOf('reading-stool').assembly, 0).map((l) => l.kind)).toEqual(['whole']);
  });
});

describe('the way in of the reading-room table', () => {
  it('goes', () => {
    const found = ways(WIDE);
    expect(found.map((f) => [f.verdict, f.check, f.because])).toEqual([
      [
        'ok',
        'way in, corner',
        `${TOP} turns level between corridors of 48 in and 42 in, held on edge, with 34 5/32 in to spare`,
      ],
      [
        'ok',
        'way in, corner',
        `${BASE} turns level between corridors of 48 in and 42 in, held on edge, with 7 9/16 in to spare`,
      ],
      ['ok', 'way in, door', `${TOP} goes through a door 36 in wide and 80 in high with 32 1/4 in to spare`],
      ['ok', 'way in, door', `${BASE} goes through a door 36 in wide and 80 in high with 6 13/32 in to spare`],
      [
        'ok',
        'way in, ceiling',
        `${TOP}, carried on edge 6 in over the floor, has 48 1/2 in to spare under a ceiling of 96 in; to stand it up takes 85 19/32 in`,
      ],
    ]);
  });

  it('needs corridor, door and ceiling to be checked', () => {
    expect(ways({}).map((f) => [f.verdict, f.because])).toEqual([
      ['not checked', 'not checked: needs the corridor width (site.route.corridor)'],
      [
        'not checked',
        'not checked: needs the door width (site.route.doorWidth) and the door height (site.route.doorHeight)',
      ],
      ['not checked', 'not checked: needs the lowest ceiling (site.route.ceiling)'],
    ]);
    expect(ways({ ...WIDE, doorHeight: 0 })[2]!.because).toBe(
      'not checked: needs the door height (site.route.doorHeight)',
    );
  });

  it('takes the second corridor to be like the first when only one is known, and says so', () => {
    const [top] = ways({ corridor: '40 in' });
    expect(top!.because).toContain('turns level between two corridors of 40 in');
    expect(top!.assumptions).toEqual(['the corridor after the turn is as wide as the one before']);
  });
});

describe('a narrow corner', () => {
  const narrow: Route = { corridor: '32 in', corridorAfter: '29 in' };

  it('stops the top; a shorter one turns', () => {
    const found = find(ways(narrow), 'corner', 'top');
    expect(found.verdict).toBe('change it');
    expect(found.because).toBe(
      `${TOP} does not turn between corridors of 32 in and 29 in: held on edge, at most 78 23/32 in turns`,
    );
    expect(found.fixes).toEqual([
      'top.length 76 3/16 in brings 1 1/32 in to spare',
      'corridors of 33 1/4 in would do, held on edge',
    ]);
    expect(find(ways(narrow, changeOf(found.fixes[0])), 'corner', 'top').verdict).toBe('ok');
    expect(find(ways({ corridor: '33 1/4 in' }), 'corner', 'top').verdict).toBe('ok');
    expect(find(ways({ corridor: '33 3/16 in' }), 'corner', 'top').verdict).toBe('look again');
  });

  it('lets the base by in frames', () => {
    const found = find(ways(narrow), 'corner', 'base');
    expect(found.verdict).toBe('look again');
    expect(found.because).toBe(
      `${BASE} does not turn between corridors of 32 in and 29 in: held on edge, it is too wide for them`,
    );
    expect(found.fixes).toEqual(['carry the frames in one by one and join the stretchers in the room']);
  });

  it('lets a base by that is stood upright under a ceiling that is high enough', () => {
    const under = (ceiling: string): Finding => find(ways({ corridor: '36 in', ceiling }), 'corner', 'base');
    expect(under('8 ft')).toMatchObject({
      verdict: 'look again',
      because: `${BASE} turns between two corridors of 36 in only stood upright`,
    });
    expect(under('5 ft').because).toContain('does not turn');
  });

  it('quotes the rule on things over 77 in when a top has to be stood upright', () => {
    const found = find(
      ways({ corridor: '30 in', corridorAfter: '24 in', ceiling: '8 ft' }, { 'top.width': '20 in', ...SLIM }),
      'corner',
      'top',
    );
    expect(found.verdict).toBe('look again');
    expect(found.because).toContain(
      "turns between corridors of 30 in and 24 in only stood upright; by one maker's rule nothing over 77 in turns upright under a door head",
    );
    expect(found.source).toContain("one maker's rule");
  });
});

/** A base that stands under a top 20 in wide. */
const SLIM: Changes = {
  'bearer.length': '18 in',
  'foot.length': '18 in',
  'post.spacing': '10 in',
  'edgeJoint.slotDepth': '3/4 in',
};

describe('a narrow door', () => {
  it('stops a wide top; a narrower one goes through', () => {
    const door: Route = { doorWidth: '28 in', doorHeight: '40 in' };
    const found = find(ways(door), 'door', 'top');
    expect(found.verdict).toBe('change it');
    expect(found.because).toBe(`${TOP} does not go through a door 28 in wide and 40 in high: 1 1/2 in is missing`);
    expect(found.fixes).toEqual(['top.width 37 1/2 in brings 1 in to spare']);
    expect(find(ways(door, changeOf(found.fixes[0])), 'door', 'top').verdict).toBe('ok');
  });

  it('lets the base by in frames', () => {
    const found = find(ways({ doorWidth: '28 in', doorHeight: '80 in' }), 'door', 'base');
    expect(found).toMatchObject({
      verdict: 'look again',
      because: `${BASE} does not go through a door 28 in wide and 80 in high: 1 19/32 in is missing`,
      fixes: ['carry the frames in one by one and join the stretchers in the room'],
    });
  });
});

describe('a low ceiling', () => {
  it('leaves no room over a top on edge; a narrower one has it', () => {
    const low: Route = { ceiling: '4 ft' };
    const found = find(ways(low), 'ceiling', 'top');
    expect(found.verdict).toBe('look again');
    expect(found.because).toBe(
      `${TOP}, carried on edge 6 in over the floor, has 1/2 in to spare under a ceiling of 48 in; to stand it up takes 85 19/32 in, so not here`,
    );
    expect(found.fixes).toEqual(['top.width 39 1/2 in brings 1 in to spare', 'carry it flat where the ceiling is low']);
    expect(find(ways(low, changeOf(found.fixes[0])), 'ceiling', 'top').verdict).toBe('ok');
    expect(find(ways({ ceiling: '40 in' }), 'ceiling', 'top')).toMatchObject({ verdict: 'change it' });
  });
});

describe('a metric shop', () => {
  it('hears it in millimetres', () => {
    const found = find(ways({ corridor: '914.4 mm' }, {}, 'meeting-table'), 'corner', 'top');
    expect(found.because).toBe(
      'packed top T (2438.1 mm x 998.1 mm x 88.1 mm) does not turn between two corridors of 914.4 mm: held on edge, at most 2410.1 mm turns',
    );
    expect(found.fixes[0]).toBe('top.length 2346 mm brings 26 mm to spare');
  });
});
