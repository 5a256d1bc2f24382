import { profileRows } from '../../lib/derive/solids/profile.ts';
import type { PanelBody, SliceBody } from '../../lib/model/body.ts';
import type { EdgeProfile } from '../../lib/model/feature.ts';
import type { HalfSpace } from './kernel.ts';

// A top whose underside is nowhere hollow is convex: all of it, profiles included, is where half-spaces meet.

/** Distance from one of the four edges of a panel as a linear function of x and y: d = a x + b y + c, inside positive. */
interface Edge {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

const edgesOf = ({ length, width }: PanelBody): Edge[] => [
  { a: 1, b: 0, c: 0 },
  { a: -1, b: 0, c: length },
  { a: 0, b: 1, c: width / 2 },
  { a: 0, b: -1, c: width / 2 },
];

/** The facets of a profile as lines depth = d0 + m · (distance from the edge - i0) of its section. */
const facets = (profile: EdgeProfile): { readonly m: number; readonly i0: number; readonly d0: number }[] => {
  const rows = profileRows(profile);
  return rows.slice(1).map(({ inset, depth }, k) => {
    const from = rows[k]!;
    return { m: (depth - from.depth) / (inset - from.inset), i0: from.inset, d0: from.depth };
  });
};

/** Half-spaces that cut a panel with profiles out of its stock. */
export function panelSpaces(body: PanelBody, profiles: readonly EdgeProfile[]): HalfSpace[] {
  if (body.underside.take !== 'lowest') throw new Error('a hollow underside is not convex');
  // Under the show face: z >= depth of the facet. Over the underside: z <= height of the plane - depth of the facet.
  const show = profiles
    .filter((p) => p.edge === 'show')
    .flatMap((p) =>
      edgesOf(body).flatMap((e) =>
        facets(p).map(({ m, i0, d0 }): HalfSpace => ({ out: [m * e.a, m * e.b, -1], most: m * (i0 - e.c) - d0 })),
      ),
    );
  const under = body.underside.planes.flatMap((plane): HalfSpace[] => [
    { out: [-plane.a, -plane.b, 1], most: plane.c },
    ...profiles
      .filter((p) => p.edge === 'underside')
      .flatMap((p) =>
        edgesOf(body).flatMap((e) =>
          facets(p).map(
            ({ m, i0, d0 }): HalfSpace => ({
              out: [m * e.a - plane.a, m * e.b - plane.b, 1],
              most: plane.c - d0 + m * (i0 - e.c),
            }),
          ),
        ),
      ),
  ]);
  return [...show, ...under];
}

/** Half-spaces that cut one strip, or one layer of it, out of the panel. */
export const sliceSpaces = ({ from, to, top, bottom }: SliceBody): HalfSpace[] => [
  { out: [0, -1, 0], most: -from },
  { out: [0, 1, 0], most: to },
  { out: [0, 0, -1], most: -top },
  ...(bottom === undefined ? [] : [{ out: [0, 0, 1] as const, most: bottom }]),
];
