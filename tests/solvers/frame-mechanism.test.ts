import { describe, expect, test } from 'vitest';
import type { FrameMember, FrameNode, SpaceFrame } from '../../lib/derive/checks/solvers/frame-model.ts';
import type { Loose } from '../../lib/derive/checks/solvers/frame-result.ts';
import { rectangleSection } from '../../lib/derive/checks/solvers/frame-section.ts';
import { solveFrame } from '../../lib/derive/checks/solvers/frame-solve.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { CHERRY, READING_TABLE, solvedCase, topPush, trestleBase } from './sample-bases.ts';

const PUSH = topPush('along', [300, 0, 0]);

function looseOf(frame: SpaceFrame, cases = [PUSH]): readonly Loose[] {
  const result = solveFrame(frame, cases);
  if (result.kind !== 'mechanism') throw new Error('nothing is loose');
  return result.loose;
}

const bar = (name: string, from: string, to: string): FrameMember => ({
  name,
  from,
  to,
  section: rectangleSection(40, 60),
  material: CHERRY,
  z: [0, 1, 0.1],
});

describe('a base that nothing holds', () => {
  test('falls over lengthwise without a stretcher: the heads move along x, all alike', () => {
    const [loose, ...others] = looseOf(trestleBase({ ...READING_TABLE, to: 'nothing' }));
    expect(others).toEqual([]);
    expect(loose!.node).toBe('A left head');
    expect(loose!.direction).toBe('x');
    for (const head of ['A left', 'A right', 'B left', 'B right']) {
      expect(loose!.moves.get(`${head} head`)!.shift[0]).toBeCloseTo(1, 9);
      expect(loose!.moves.get(`${head} foot`)!.shift[0]).toBe(0);
    }
    // The posts turn as one: 1 mm over their height.
    expect(loose!.moves.get('A left foot')!.turn[1]).toBeCloseTo((180 / Math.PI) * (1 / 749.3), 9);
  });

  test('is named whichever load is asked of it, and without any', () => {
    const base = trestleBase({ ...READING_TABLE, to: 'nothing' });
    expect(looseOf(base, [topPush('down', [0, 0, -1000])])[0]!.direction).toBe('x');
    expect(looseOf(base, [])[0]!.direction).toBe('x');
  });

  test('stands with the softest stretcher joint that makes sense', () => {
    const soft = { ...READING_TABLE, stretcherJoint: 1e4, postJoint: 1e4 };
    expect(solvedCase(trestleBase(soft), PUSH).moves.get('A left head')!.shift[0]).toBeGreaterThan(1000);
  });

  // Stiffness of the top over that of wood; the base must be told from a mechanism under any.
  test.each([1, 1e3, 1e6, 1e8])('is told from a sound one under a top %f times as stiff', (factor) => {
    const under = (base: SpaceFrame): SpaceFrame => ({
      ...base,
      members: base.members.map((m) =>
        m.name.endsWith('top') ? { ...m, material: { e: factor * CHERRY.e, g: factor * CHERRY.g } } : m,
      ),
    });
    expect(looseOf(under(trestleBase({ ...READING_TABLE, to: 'nothing' })))[0]!.direction).toBe('x');
    const sound = solvedCase(under(trestleBase(READING_TABLE)), PUSH);
    expect(sound.moves.get('A left head')!.shift[0]).toBeCloseTo(7.08, 1);
  });

  test('is found however the table is turned in space', () => {
    const turn = ([x, y, z]: Vec3): Vec3 => [
      0.6 * x - 0.8 * y,
      0.8 * (0.8 * x + 0.6 * y) - 0.6 * z,
      0.6 * (0.8 * x + 0.6 * y) + 0.8 * z,
    ];
    const base = trestleBase({ ...READING_TABLE, to: 'nothing' });
    const [loose, ...others] = looseOf({
      nodes: base.nodes.map((n) => ({ ...n, at: turn(n.at) })),
      members: base.members.map((m) => ({ ...m, z: turn(m.z) })),
    });
    expect(others).toEqual([]);
    expect(loose!.node).toMatch(/head$/);
  });
});

describe('loose pieces', () => {
  test('two members on one foot that turns: one name for each way it turns', () => {
    const frame: SpaceFrame = {
      nodes: [
        { name: 'foot', at: [0, 0, 0], held: ['x', 'y', 'z'] },
        { name: 'knee', at: [0, 0, 400] },
        { name: 'head', at: [300, 0, 400] },
      ],
      members: [bar('post', 'foot', 'knee'), bar('arm', 'knee', 'head')],
    };
    const loose = looseOf(frame, []);
    expect(loose).toHaveLength(3);
    expect(loose.map((l) => l.node)).toContain('head');
    for (const { moves, node, direction } of loose) {
      expect(moves.get(node)!.shift['xyz'.indexOf(direction)]).toBeCloseTo(1, 9);
    }
  });

  test('a stick on nothing goes five ways; the sixth, about itself, moves nothing', () => {
    const frame = { nodes: [node('a', 0), node('b', 500)], members: [bar('m', 'a', 'b')] };
    expect(looseOf(frame, [])).toHaveLength(5);
  });

  test('a node without a member', () => {
    const held: FrameNode = { ...node('a', 0), held: ['x', 'y', 'z', 'rx', 'ry', 'rz'] };
    const loose = looseOf({ nodes: [held, node('b', 500), node('alone', 900)], members: [bar('m', 'a', 'b')] }, []);
    expect(loose.map((l) => `${l.node} ${l.direction}`)).toEqual(['alone x', 'alone y', 'alone z']);
  });
});

describe('a node whose joints are all hinges', () => {
  // A tripod of hinged legs holds its head; the head itself may turn on the spot.
  const feet = [0, 120, 240].map((deg, k): FrameNode => {
    const turn = (deg * Math.PI) / 180;
    return {
      name: `foot ${k}`,
      at: [300 * Math.cos(turn), 300 * Math.sin(turn), 0],
      held: ['x', 'y', 'z', 'rx', 'ry', 'rz'],
    };
  });
  const hinge = { y: 0, z: 0, twist: 0 };
  const tripod: SpaceFrame = {
    nodes: [...feet, { name: 'head', at: [0, 0, 700] }],
    members: feet.map((f) => ({ ...bar(`leg of ${f.name}`, f.name, 'head'), springs: { from: hinge, to: hinge } })),
  };

  test('spins and does no harm under a force', () => {
    const result = solveFrame(tripod, [{ name: 'down', loads: [{ node: 'head', force: [0, 0, -900] }] }]);
    if (result.kind !== 'solved') throw new Error('loose');
    expect(result.spins.map((s) => `${s.node} ${s.direction}`)).toEqual(['head rx', 'head ry', 'head rz']);
    expect(result.spins[0]!.moves.get('head')!.turn[0]).toBeCloseTo(1, 12);
    const { ends, moves } = result.cases[0]!;
    // 300 N on each leg, along a leg of √(300² + 700²).
    expect(ends.get('leg of foot 1')!.to.axial).toBeCloseTo((-300 * Math.hypot(300, 700)) / 700, 6);
    expect(moves.get('head')!.turn).toEqual([0, 0, 0]);
  });

  test('is a mechanism under a moment', () => {
    const loose = looseOf(tripod, [{ name: 'turn', loads: [{ node: 'head', moment: [0, 5, 0] }] }]);
    expect(loose.map((l) => `${l.node} ${l.direction}`)).toEqual(['head ry']);
  });
});

function node(name: string, x: number): FrameNode {
  return { name, at: [x, 0, 0] };
}

describe('a frame that is not one', () => {
  const a: FrameNode = { ...node('a', 0), held: ['x', 'y', 'z', 'rx', 'ry', 'rz'] };
  const b = node('b', 500);
  test.each([
    ['an unknown node', { nodes: [a, b], members: [bar('m', 'a', 'c')] }, 'm: there is no node c'],
    ['a name used twice', { nodes: [a, b, node('b', 7)], members: [] }, 'two of the nodes are called b'],
    [
      'a member used twice',
      { nodes: [a, b], members: [bar('m', 'a', 'b'), bar('m', 'a', 'b')] },
      'two of the members are called m',
    ],
    ['a member without length', { nodes: [a, node('b', 0)], members: [bar('m', 'a', 'b')] }, 'member m has no length'],
    [
      'a depth along the member',
      { nodes: [a, b], members: [{ ...bar('m', 'a', 'b'), z: [1, 0, 0] as const }] },
      'member m: z lies along the member',
    ],
    [
      'a spring that pushes',
      { nodes: [a, b], members: [{ ...bar('m', 'a', 'b'), springs: { to: { y: -5 } } }] },
      'member m: spring is -5; it must not be negative',
    ],
  ])('%s', (_, frame, message) => {
    expect(() => solveFrame(frame, [])).toThrow(new RangeError(message));
  });

  test('a load on an unknown node', () => {
    const load = { name: 'push', loads: [{ node: 'c', force: [1, 0, 0] as const }] };
    expect(() => solveFrame({ nodes: [a, b], members: [bar('m', 'a', 'b')] }, [load])).toThrow(
      'load case push: there is no node c',
    );
  });
});
