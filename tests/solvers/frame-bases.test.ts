import { describe, expect, test } from 'vitest';
import type {
  Dof,
  EndSprings,
  FrameMember,
  FrameNode,
  SpaceFrame,
} from '../../lib/derive/checks/solvers/frame-model.ts';
import { rectangleSection } from '../../lib/derive/checks/solvers/frame-section.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { CHERRY, solvedCase } from './sample-bases.ts';

const UP: Vec3 = [0, 0, 1];
const ALONG: Vec3 = [1, 0, 0];
const bar = (name: string, from: string, to: string, size: readonly [number, number], z: Vec3): FrameMember => ({
  name,
  from,
  to,
  section: rectangleSection(...size),
  material: CHERRY,
  z,
});

/** Four legs under aprons; the top a rigid plate: one node, reached by arms, turning freely on the legs. */
function fourLegs(joint: number): SpaceFrame {
  const spots: readonly (readonly [string, number, number])[] = [
    ['1', 0, 0],
    ['2', 1200, 0],
    ['3', 1200, 700],
    ['4', 0, 700],
  ];
  const center: Vec3 = [600, 350, 730];
  const hinge: EndSprings = { y: 0, z: 0 };
  const nodes = spots.flatMap(([n, x, y]): FrameNode[] => [
    { name: `foot ${n}`, at: [x, y, 0], held: ['x', 'y', 'z'] },
    { name: `head ${n}`, at: [x, y, 680] },
  ]);
  const legs = spots.flatMap(([n, x, y]): FrameMember[] => [
    bar(`leg ${n}`, `foot ${n}`, `head ${n}`, [60, 60], ALONG),
    {
      ...bar(`stub ${n}`, `head ${n}`, 'top', [60, 60], ALONG),
      arms: { to: [x - center[0], y - center[1], 0] },
      springs: { to: hinge },
    },
  ]);
  const springs = { from: { y: joint }, to: { y: joint } };
  const aprons = spots.map(([n], k) => ({
    ...bar(`apron ${n}`, `head ${n}`, `head ${spots[(k + 1) % 4]![0]}`, [22, 90], UP),
    springs,
  }));
  return { nodes: [...nodes, { name: 'top', at: center }], members: [...legs, ...aprons] };
}

/** Two panel legs 500 mm wide, standing on their corners, with stretchers on arms at either side of the middle. */
function panels(stretchers: readonly number[]): SpaceFrame {
  const nodes = ['A', 'B'].flatMap((f, k): FrameNode[] => [
    { name: `${f} corner 1`, at: [1300 * k, -230, 0], held: ['x', 'y', 'z'] },
    { name: `${f} corner 2`, at: [1300 * k, 230, 0], held: ['x', 'y', 'z'] },
    { name: `${f} floor`, at: [1300 * k, 0, 0] },
    { name: `${f} middle`, at: [1300 * k, 0, 350] },
    { name: `${f} head`, at: [1300 * k, 0, 720] },
  ]);
  const legs = ['A', 'B'].flatMap((f): FrameMember[] => [
    bar(`${f} foot 1`, `${f} corner 1`, `${f} floor`, [100, 45], UP),
    bar(`${f} foot 2`, `${f} floor`, `${f} corner 2`, [100, 45], UP),
    bar(`${f} lower`, `${f} floor`, `${f} middle`, [500, 45], ALONG),
    bar(`${f} upper`, `${f} middle`, `${f} head`, [500, 45], ALONG),
  ]);
  const spring: EndSprings = { y: 80e6 };
  const between = stretchers.map(
    (y): FrameMember => ({
      ...bar(`stretcher at ${y}`, 'A middle', 'B middle', [38, 127], UP),
      arms: { from: [0, y, 0], to: [0, y, 0] },
      springs: { from: spring, to: spring },
    }),
  );
  const hinge: EndSprings = { y: 0 };
  const top = { ...bar('top', 'A head', 'B head', [900, 40], UP), springs: { from: hinge, to: hinge } };
  return { nodes, members: [...legs, ...between, top] };
}

const pushed = (frame: SpaceFrame, node: string, force: Vec3) =>
  solvedCase(frame, { name: 'push', loads: [{ node, force }] });

describe('a four-leg table', () => {
  test('sways as two portals each way, its top a rigid plate', () => {
    const { moves } = pushed(fourLegs(40e6), 'top', [300, 0, 0]);
    const heads = ['1', '2', '3', '4'].map((n) => moves.get(`head ${n}`)!.shift[0]);
    for (const x of heads) expect(x / heads[0]!).toBeCloseTo(1, 3);
    // Portal of 150 N, pushed 50 mm above the aprons: H h³/6EI + H h (h + 50) (L/12EI + 1/2k).
    const posts = (150 * 680 ** 3) / (6 * 10_300 * 1.08e6);
    const aprons = 150 * 680 * 730 * (1200 / (12 * 10_300 * 1.3365e6) + 1 / (2 * 40e6));
    expect(Math.abs(heads[0]! / (posts + aprons) - 1)).toBeLessThan(0.005);
  });

  test('turns about the upright when it is pushed off its middle', () => {
    const frame = fourLegs(40e6);
    const { moves } = solvedCase(frame, { name: 'turn', loads: [{ node: 'top', moment: [0, 0, 3e5] }] });
    expect(moves.get('top')!.turn[2]).toBeGreaterThan(0);
    expect(moves.get('head 1')!.shift[0]).toBeGreaterThan(0);
    expect(moves.get('head 3')!.shift[0] / moves.get('head 1')!.shift[0]).toBeCloseTo(-1, 9);
  });
});

describe('a table on two panels', () => {
  test('stands with one stretcher, sways half as much with two', () => {
    const [one, two] = [[0], [-150, 150]].map(
      (y) => pushed(panels(y), 'A head', [300, 0, 0]).moves.get('A head')!.shift[0],
    );
    expect(one).toBeGreaterThan(0);
    expect(two! / one!).toBeGreaterThan(0.4);
    expect(two! / one!).toBeLessThan(0.8);
  });

  test('shares the push alike between stretchers on either side', () => {
    const { ends } = pushed(panels([-150, 150]), 'A head', [300, 0, 0]);
    const moments = [-150, 150].map((y) => ends.get(`stretcher at ${y}`)!.from.momentY);
    expect(moments[0]! / moments[1]!).toBeCloseTo(1, 8);
  });

  test('cantilevers on a panel that cannot turn at the floor', () => {
    // Textbook: H h³/3EI, moment H h; the panel alone, held at the floor.
    const held: Dof[] = ['x', 'y', 'z', 'rx', 'ry', 'rz'];
    const frame: SpaceFrame = {
      nodes: [
        { name: 'floor', at: [0, 0, 0], held },
        { name: 'head', at: [0, 0, 700] },
      ],
      members: [bar('panel', 'floor', 'head', [500, 45], ALONG)],
    };
    const { moves, ends, reactions } = pushed(frame, 'head', [200, 0, 0]);
    const i = (500 * 45 ** 3) / 12;
    expect(moves.get('head')!.shift[0]).toBeCloseTo((200 * 700 ** 3) / (3 * 10_300 * i), 10);
    expect(Math.abs(ends.get('panel')!.from.momentY)).toBeCloseTo(200 * 700, 6);
    expect(reactions.get('floor')!.moment[1]).toBeCloseTo(-200 * 700, 6);
  });
});
