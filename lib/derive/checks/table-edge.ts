import type { Vec2 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';
import type { Bounds } from '../solids/solid.ts';
import type { Span } from './span.ts';

/** Left and right as seen from the reference end. */
export type EdgeName = 'left side' | 'right side' | 'reference end' | 'far end';

/** A box as one sees it who sits at an edge, mm. */
export interface SeenBox {
  /** Along the edge from its start: from the reference end on a side, from the right side on an end. */
  readonly along: Span;
  /** In from the edge. */
  readonly deep: Span;
  /** Over the floor. */
  readonly up: Span;
}

/**
 * One edge of a top as one sits at it.
 *
 *      start ──── along ────►
 *      ─────────────────────── edge
 *                 │ deep
 *                 ▼
 */
export interface TableEdge {
  readonly name: EdgeName;
  readonly kind: 'side' | 'end';
  /** mm, from start to end. */
  readonly length: Mm;
  /** mm, to the opposite edge. */
  readonly across: Mm;
  /** The point of the table's plan that lies so far along the edge and so deep in from it. */
  readonly at: (along: Mm, deep: Mm) => Vec2;
  readonly seen: (box: Bounds) => SeenBox;
}

/** The four edges of a top whose edges run along x and y of the table. */
export function tableEdges({ min, max }: Bounds): readonly [TableEdge, TableEdge, TableEdge, TableEdge] {
  const [x0, y0] = min;
  const [x1, y1] = max;
  return [
    edge('left side', { axis: 0, start: x0, end: x1, at: y1, opposite: y0 }),
    edge('right side', { axis: 0, start: x0, end: x1, at: y0, opposite: y1 }),
    edge('reference end', { axis: 1, start: y0, end: y1, at: x0, opposite: x1 }),
    edge('far end', { axis: 1, start: y0, end: y1, at: x1, opposite: x0 }),
  ];
}

interface Line {
  /** Which axis of the table runs along the edge. */
  readonly axis: 0 | 1;
  readonly start: Mm;
  readonly end: Mm;
  readonly at: Mm;
  readonly opposite: Mm;
}

function edge(name: EdgeName, { axis, start, end, at, opposite }: Line): TableEdge {
  const inward = Math.sign(opposite - at);
  const across = axis === 0 ? 1 : 0;
  const deep = (v: Mm): Mm => (v - at) * inward;
  return {
    name,
    kind: axis === 0 ? 'side' : 'end',
    length: end - start,
    across: Math.abs(opposite - at),
    at: (a, d) => (axis === 0 ? [start + a, at + inward * d] : [at + inward * d, start + a]),
    seen: ({ min, max }) => {
      const [p, q] = [deep(min[across]), deep(max[across])];
      return {
        along: [min[axis] - start, max[axis] - start],
        deep: [Math.min(p, q), Math.max(p, q)],
        up: [min[2], max[2]],
      };
    },
  };
}
