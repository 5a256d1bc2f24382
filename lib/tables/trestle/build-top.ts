import type { Frame } from '../../geometry/frame.ts';
import type { Surface } from '../../geometry/surface.ts';
import { edgeJoint, tenonStations } from '../../joints/edge-joint.ts';
import { plainJoint } from '../../joints/loose-tenon-joint.ts';
import type { PlacedPart } from '../../model/assembly.ts';
import type { PanelBody } from '../../model/body.ts';
import type { Composition } from '../../model/composition.ts';
import type { EdgeProfile } from '../../model/feature.ts';
import { strip, thickest } from '../../parts/strip.ts';
import { top } from '../../parts/top.ts';
import type { Mm } from '../../units/mm.ts';
import { gluedAllowance } from './base-context.ts';
import { type StripSpan, stripSpans } from './strip-spans.ts';
import type { TrestleValues } from './values.ts';

/** Where the top stands: turned over, so that its show face looks up. */
const topFrame = (height: Mm): Frame => ({ origin: [0, 0, height], x: [1, 0, 0], y: [0, -1, 0] });

/**
 * A bottom layer thinner than this at its thick edge could not be milled and clamped: it is left out, and the show board
 * goes down to the underside, mm (our convention).
 */
const FEATHER = 6;

interface PlacedStrip {
  readonly span: StripSpan;
  readonly show: PlacedPart;
  readonly under?: PlacedPart;
}

/** The strips, the joints between them and the glued top; its underside as measured, or the wedge of the two thicknesses. */
export function buildTop(values: TrestleValues, c: Composition, underside?: Surface): PlacedPart {
  const { top: t, table } = values;
  const frame = topFrame(table.height);
  const profiles = topProfiles(values);
  const shape = { length: t.length, width: t.width, thickness: t.thickness, edgeThickness: t.edgeThickness };
  const glued = top({
    id: 'top',
    mark: 'T',
    wood: t.wood,
    ...shape,
    profiles,
    ...(underside ? { underside } : {}),
    members: [],
  });
  const panel = glued.body as PanelBody;
  const strips = stripSpans(t.strips, t.width).map((span) => placeStrip(values, c, frame, panel, profiles, span));
  strips.slice(1).forEach((right, n) => {
    joinStrips(values, c, panel, strips[n]!, right, n);
  });
  const members = strips.flatMap((s) => [s.show.part.id, ...(s.under ? [s.under.part.id] : [])]);
  return c.place({ ...glued, members }, frame);
}

function placeStrip(
  values: TrestleValues,
  c: Composition,
  frame: Frame,
  panel: PanelBody,
  profiles: readonly EdgeProfile[],
  span: StripSpan,
): PlacedStrip {
  const { top: t, allowance } = values;
  const common = { wood: t.wood, allowance: gluedAllowance(allowance), panel, profiles, from: span.from, to: span.to };
  const notes = ['taper the underside after gluing', ...span.notes];
  const layered = t.layers === 2 && thickest(panel, span.from, span.to) - t.showLayer > FEATHER;
  const id = `top/strip-${span.label}`;
  const mark = `T${span.label.toUpperCase()}`;
  if (!layered) return { span, show: c.place(strip({ ...common, id, mark, name: 'strip', notes }), frame) };
  const show = strip({
    ...common,
    id: `${id}/show`,
    mark: `${mark}S`,
    name: 'strip, show board',
    layer: { top: 0, bottom: t.showLayer },
    notes: span.notes,
  });
  const under = strip({
    ...common,
    id: `${id}/under`,
    mark: `${mark}U`,
    name: 'strip, under board',
    layer: { top: t.showLayer },
    notes,
  });
  const placed = { span, show: c.place(show, frame), under: c.place(under, frame) };
  const area = t.length * (span.to - span.from);
  c.join(plainJoint(`${id}/layer`, 'layer', [placed.show, placed.under], area));
  return placed;
}

function joinStrips(
  values: TrestleValues,
  c: Composition,
  panel: PanelBody,
  left: PlacedStrip,
  right: PlacedStrip,
  n: number,
): void {
  const { top: t, edgeJoint: e } = values;
  const at = left.span.to;
  const stations = tenonStations(t.length, e.first, e.spacing);
  const size = {
    thickness: e.tenonThickness,
    width: e.tenonWidth,
    depth: e.slotDepth,
    depthPlay: e.depthPlay,
    endPlay: e.endPlay,
    edges: 'round' as const,
  };
  const tenons = { size, gauge: e.gauge, stations, mark: (k: number) => `E${n * stations.length + k + 1}` };
  const both = left.under && right.under;
  c.join(
    edgeJoint({
      id: `top/joint-${n + 1}`,
      between: [left.show, right.show],
      panel,
      at,
      wood: t.wood,
      ...(e.tenons ? { tenons } : {}),
      ...(both ? { depth: { top: 0, bottom: t.showLayer } } : {}),
    }),
  );
  if (left.under && right.under) {
    c.join(
      edgeJoint({
        id: `top/joint-${n + 1}-under`,
        between: [left.under, right.under],
        panel,
        at,
        wood: t.wood,
        depth: { top: t.showLayer },
      }),
    );
  }
}

function topProfiles({ top: t }: TrestleValues): EdgeProfile[] {
  const profile = (edge: EdgeProfile['edge'], shape: typeof t.showEdge, size: Mm): EdgeProfile[] => {
    if (shape === 'square') return [];
    const id = `${edge}-edge`;
    if (shape === 'chamfer') return [{ kind: 'chamfer', id, edge, width: size, angle: 45 }];
    return [{ kind: 'roundOver', id, edge, radius: size }];
  };
  return [
    ...profile('show', t.showEdge, t.showEdgeSize),
    ...profile('underside', t.undersideEdge, t.undersideEdgeSize),
  ];
}
