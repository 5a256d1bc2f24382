import { facetOutline } from '../../geometry/outline.ts';
import type { BarBody, Body, BodyKind, PanelBody, PrismBody, SliceBody } from '../../model/body.ts';
import { type EdgeProfile, isEdgeProfile, isPocket } from '../../model/feature.ts';
import type { Part } from '../../model/part.ts';
import { clipConvex } from './clip.ts';
import { panelSolid } from './panel.ts';
import { cutPocket } from './pocket.ts';
import { sweep } from './prism.ts';
import type { Solid } from './solid.ts';

/** A pocket that the solid does not show, because it cannot be cut as said. */
export interface Refusal {
  readonly feature: string;
  readonly because: string;
}

export interface SolidOfPart {
  readonly solid: Solid;
  readonly refused: readonly Refusal[];
}

/** Panels that were made already, so that the slices of one panel need not make it again. */
export type MadePanels = Map<PanelBody, { readonly profiles: readonly EdgeProfile[]; readonly solid: Solid }>;

/** The finished part as a closed solid in its own frame, and the features that could not be cut. */
export function solidOf(part: Part, made: MadePanels = new Map()): SolidOfPart {
  const solid = blankOf(part, made);
  const refused: Refusal[] = [];
  for (const feature of part.features) {
    if (!isPocket(feature)) continue;
    const because = cutPocket(solid, feature);
    if (because) refused.push({ feature: feature.id, because });
  }
  return { solid, refused };
}

/** The part before any pocket is cut. */
export const blankOf = (part: Part, made: MadePanels = new Map()): Solid =>
  bodySolid(part.body, part.features.filter(isEdgeProfile), made);

const BUILD: {
  readonly [K in BodyKind]: (
    body: Extract<Body, { kind: K }>,
    profiles: readonly EdgeProfile[],
    made: MadePanels,
  ) => Solid;
} = {
  prism: prismSolid,
  bar: barSolid,
  panel: panelSolid,
  slice: sliceSolid,
};

export function bodySolid<K extends BodyKind>(
  body: Extract<Body, { kind: K }>,
  profiles: readonly EdgeProfile[],
  made: MadePanels = new Map(),
): Solid {
  return BUILD[body.kind as K](body, profiles, made);
}

function prismSolid(body: PrismBody): Solid {
  const near = facetOutline(body.outline);
  const far = body.far ? facetOutline(body.far) : near;
  return sweep(near, far, body.thickness, (x, y, along) => [x, y, along], { near: 'reference-face', far: 'far-face' });
}

function barSolid(body: BarBody): Solid {
  const profile = facetOutline(body.profile, 45);
  return sweep(profile, profile, body.length, (x, y, along) => [along, x, y], {
    near: 'reference-end',
    far: 'far-end',
  });
}

function sliceSolid(body: SliceBody, _: readonly EdgeProfile[], made: MadePanels): Solid {
  const half = body.of.width / 2;
  const whole = wholePanel(body.of, body.profiles, made);
  let solid = whole;
  if (body.from > -half) solid = clipConvex(solid, (p) => body.from - p[1], 'joint.from');
  if (body.to < half) solid = clipConvex(solid, (p) => p[1] - body.to, 'joint.to');
  if (body.top > 0) solid = clipConvex(solid, (p) => body.top - p[2], 'layer.top');
  const { bottom } = body;
  if (bottom !== undefined) solid = clipConvex(solid, (p) => p[2] - bottom, 'layer.bottom');
  if (solid !== whole) return solid;
  // Nothing was cut off: the panel itself, which the other slices share. Pockets are cut into a copy.
  return {
    vertices: [...solid.vertices],
    faces: solid.faces.map((f) => ({ ...f, loops: f.loops.map((l) => [...l]) })),
  };
}

function wholePanel(body: PanelBody, profiles: readonly EdgeProfile[], made: MadePanels): Solid {
  const known = made.get(body);
  if (known?.profiles === profiles) return known.solid;
  const solid = panelSolid(body, profiles);
  made.set(body, { profiles, solid });
  return solid;
}
