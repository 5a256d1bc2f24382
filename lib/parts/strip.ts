import { sectionAlong } from '../geometry/surface.ts';
import type { PanelBody } from '../model/body.ts';
import type { EdgeProfile } from '../model/feature.ts';
import type { Part } from '../model/part.ts';
import type { Mm } from '../units/mm.ts';
import { needPositive, type PieceOptions, partFrom } from './piece.ts';

export interface StripOptions extends PieceOptions {
  /** The panel it belongs to, and the profiles that will be worked on that panel. */
  readonly panel: PanelBody;
  readonly profiles: readonly EdgeProfile[];
  /** mm from the center line. */
  readonly from: Mm;
  readonly to: Mm;
  /** Which layer: mm below the show face; absent for a strip of one board. */
  readonly layer?: { readonly top: Mm; readonly bottom?: Mm };
}

/**
 * One strip of a glued top, or one layer of it, in the frame of the top. Its finished thickness is that of its thick
 * edge; the blank is thicker by the clean-up allowance, and the taper takes the rest away after gluing.
 */
export function strip(options: StripOptions): Part {
  const { id, panel, from, to, layer } = options;
  const thick = thickest(panel, from, to);
  const thickness = Math.min(layer?.bottom ?? thick, thick) - (layer?.top ?? 0);
  const finished = { length: panel.length, width: to - from, thickness };
  needPositive(id, finished);
  return partFrom(options, {
    kind: 'strip',
    name: 'strip',
    finished,
    body: {
      kind: 'slice',
      of: panel,
      profiles: options.profiles,
      from,
      to,
      top: layer?.top ?? 0,
      ...(layer?.bottom !== undefined && layer.bottom < thick ? { bottom: layer.bottom } : {}),
    },
  });
}

/** The greatest thickness of the panel between two lines along it, mm. */
export function thickest(panel: PanelBody, from: Mm, to: Mm): Mm {
  return Math.max(
    ...[0, panel.length].flatMap((x) => sectionAlong(panel.underside, [x, from], [x, to]).map((p) => p.z)),
  );
}
