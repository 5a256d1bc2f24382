import type { PlacedSolid } from '../../lib/derive/drawings/placed-solid.ts';
import { panelSolid } from '../../lib/derive/solids/panel.ts';
import { cutPocket } from '../../lib/derive/solids/pocket.ts';
import { sweep } from '../../lib/derive/solids/prism.ts';
import type { Solid } from '../../lib/derive/solids/solid.ts';
import type { Frame } from '../../lib/geometry/frame.ts';
import type { Surface } from '../../lib/geometry/surface.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import type { Pocket, RoundOver } from '../../lib/model/feature.ts';

export const at = (origin: Vec3): Frame => ({ origin, x: [1, 0, 0], y: [0, 1, 0] });

/** A block with one corner at the origin of its frame. */
export function block([x, y, z]: Vec3): Solid {
  const outline = [
    { x: 0, y: 0 },
    { x, y: 0 },
    { x, y },
    { x: 0, y },
  ];
  return sweep(outline, outline, z, (u, v, along) => [u, v, along], { near: 'below', far: 'above' });
}

export const placedBlock = (part: string, size: Vec3, origin: Vec3): PlacedSolid => ({
  part,
  solid: block(size),
  frame: at(origin),
});

/** Cuts pockets and insists that each could be cut. */
export function withPockets(solid: Solid, pockets: readonly Pocket[]): Solid {
  for (const pocket of pockets) {
    const because = cutPocket(solid, pocket);
    if (because) throw new Error(`${pocket.id}: ${because}`);
  }
  return solid;
}

const WEDGE: Surface = {
  take: 'lowest',
  planes: [
    { name: 'left', a: 0, b: 0.06, c: 32 },
    { name: 'right', a: 0, b: -0.06, c: 32 },
  ],
};

export const roundOver = (edge: RoundOver['edge'], radius: number): RoundOver => ({
  kind: 'roundOver',
  id: edge,
  edge,
  radius,
});

/** A slab 600 x 300, show face up at 400, 32 thick in the middle and 23 at the edges, round at the show arris. */
const wedgeSlab = (): Solid =>
  panelSolid({ kind: 'panel', length: 600, width: 300, underside: WEDGE }, [roundOver('show', 4)]);

const SLAB_FRAME: Frame = { origin: [0, 0, 400], x: [1, 0, 0], y: [0, -1, 0] };

/**
 * A small table: a slab with a pocket in its show face on four posts, upright but for one that leans, one with a slot
 * right through it, and a rail between two of them.
 */
export function smallTable(): PlacedSolid[] {
  const slab = withPockets(wedgeSlab(), [
    {
      kind: 'mortise',
      id: 'recess',
      at: [210, 40, 0],
      into: [0, 0, 1],
      along: [1, 0, 0],
      length: 90,
      width: 30,
      depth: 12,
      ends: 'round',
      play: 0,
    },
  ]);
  const post = (part: string, x: number, y: number, pockets: readonly Pocket[] = []): PlacedSolid => ({
    part,
    solid: withPockets(block([40, 50, 370]), pockets),
    frame: at([x, y, 0]),
  });
  return [
    { part: 'slab', solid: slab, frame: SLAB_FRAME },
    post('post-1', 60, -125, [
      {
        kind: 'slottedHole',
        id: 'slot',
        at: [20, 0, 200],
        into: [0, 1, 0],
        along: [0, 0, 1],
        length: 60,
        width: 16,
        depth: 'through',
        purpose: 'clearance',
      },
    ]),
    post('post-2', 500, -125),
    post('post-3', 60, 75),
    {
      part: 'post-4',
      solid: block([40, 50, 330]),
      frame: { origin: [500, 80, 0], x: [0.96, 0, -0.28], y: [0, 1, 0] },
    },
    placedBlock('rail', [400, 20, 60], [100, -110, 150]),
  ];
}

/** Three boards in a ring: each lies over the next with one end and under the one before with the other. */
export function ring(): PlacedSolid[] {
  return [0, 1, 2].map((k): PlacedSolid => {
    const turn = (k * 2 * Math.PI) / 3;
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const x: Vec3 = [0.96 * c, 0.96 * s, 0.28];
    const y: Vec3 = [-s, c, 0];
    const z: Vec3 = [-0.28 * c, -0.28 * s, 0.96];
    // The middle of the board lies 25 mm off the axis of the ring.
    const middle: Vec3 = [25 * s, -25 * c, 0];
    const origin = [0, 1, 2].map((i) => middle[i]! - 80 * x[i]! - 10 * y[i]! - 2.5 * z[i]!) as unknown as Vec3;
    return { part: `board-${k}`, solid: block([160, 20, 5]), frame: { origin, x, y } };
  });
}

/** A post with a square hole and a rail that runs through it, filling it. */
export function throughRail(): PlacedSolid[] {
  const post = withPockets(block([60, 40, 200]), [
    {
      kind: 'mortise',
      id: 'hole',
      at: [0, 20, 120],
      into: [1, 0, 0],
      along: [0, 0, 1],
      length: 50,
      width: 24,
      depth: 20,
      ends: 'square',
      play: 0,
    },
  ]);
  return [{ part: 'post', solid: post, frame: at([0, 0, 0]) }, placedBlock('rail', [150, 24, 50], [-130, 8, 95])];
}
