import { parseDxf } from '../readers/dxf-parse.ts';

/** A corner of a polyline and the bulge of the side that leaves it. */
export type Corner = readonly [x: number, y: number, bulge: number];

interface Polyline {
  readonly type: string;
  readonly layer: string;
  readonly shape: boolean;
  readonly vertices: readonly { readonly x: number; readonly y: number; readonly bulge?: number }[];
}

/** The polylines on a layer as dxf-parser reads them; `shape` is its word for closed. */
export const polylinesOf = (dxf: string, layer: string): readonly (readonly Corner[])[] =>
  (parseDxf(dxf).entities as unknown as Polyline[])
    .filter((entity) => entity.type === 'LWPOLYLINE' && entity.layer === layer)
    .map(({ vertices }) => vertices.map((v): Corner => [v.x, v.y, v.bulge ?? 0]));

/** The one outline of a template as dxf-parser reads it. */
export function outlineOf(dxf: string, layer = 'OUTLINE'): readonly Corner[] {
  const [outline, ...more] = polylinesOf(dxf, layer);
  if (!outline || more.length > 0) throw new Error(`the file has ${more.length + (outline ? 1 : 0)} lines on ${layer}`);
  return outline;
}

/** The greatest height of an outline over a place along the sheet; its upper edge is made of straight lines. */
export function upperEdge(outline: readonly Corner[], at: number): number {
  const heights = outline.flatMap(([ax, ay, bulge], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    const across = bx - ax;
    const share = (at - ax) / across;
    return bulge !== 0 || across === 0 || share < 0 || share > 1 ? [] : [ay + (by - ay) * share];
  });
  return Math.max(...heights);
}
