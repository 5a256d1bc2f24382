import { surfaceToOuter } from '../../geometry/surface.ts';
import type { Assembly } from '../../model/assembly.ts';
import type { PanelBody } from '../../model/body.ts';
import { composition } from '../../model/composition.ts';
import type { Measured } from '../../model/measured.ts';
import type { FrameContext, FrameParts } from './base-context.ts';
import { bearerFrame } from './bearer-frame.ts';
import { buildTop } from './build-top.ts';
import { panelFrame } from './panel-frame.ts';
import { postsFrame } from './posts-frame.ts';
import { buildStretchers } from './stretchers.ts';
import type { TrestleValues } from './values.ts';

const FRAMES: { readonly [K in TrestleValues['frame']['kind']]: (context: FrameContext) => FrameParts } = {
  bearer: bearerFrame,
  posts: postsFrame,
  panel: panelFrame,
};

/**
 * A table with a wedge-section top on two leg frames.
 *
 * Table frame: x along the length from the reference end of the top, y across from the center line (left positive), z up
 * from the floor. Frame A stands near the reference end.
 */
export function trestleTable(values: TrestleValues, title = 'Trestle table', measured: Measured = {}): Assembly {
  const c = composition(title);
  const top = buildTop(values, c, measured.underside);
  const underside = surfaceToOuter((top.part.body as PanelBody).underside, top.frame);
  let tenons = 0;
  const nextTenon = (): string => {
    tenons += 1;
    return `N${tenons}`;
  };
  const build = FRAMES[values.frame.kind];
  const frame = (name: 'a' | 'b', index: 0 | 1): FrameParts => {
    const x = index === 0 ? values.frame.inset : values.top.length - values.frame.inset;
    const elevation = { origin: [x, 0, 0], x: [0, index === 0 ? 1 : -1, 0], y: [0, 0, 1] } as const;
    return build({ values, c, name, index, elevation, underside, top, nextTenon });
  };
  buildStretchers(values, c, [frame('a', 0), frame('b', 1)], nextTenon);
  const { glueSpread, coats, coverage, spare } = values.supplies;
  return c.done({ supplies: { glueSpread, coats, coverage, spare: spare / 100 }, climate: values.moisture });
}
