import { visibleParts } from '../../model/assembly.ts';
import type { Mortise } from '../../model/feature.ts';
import type { Part, PartId, PartKind, Size } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { cutList } from '../cut-list/cut-list.ts';
import type { CheckContext } from './check.ts';

/** Pieces that are made alike, as a machine sees them. */
export interface ShopPiece {
  /** "strip". */
  readonly name: string;
  readonly marks: readonly string[];
  readonly kind: PartKind;
  readonly part: PartId;
  /** mm, as it comes to the machine. */
  readonly rough: Size;
  readonly finished: Size;
}

/** Made from strips and offcuts by hand: no machine of the shop is asked. */
const SMALL: ReadonlySet<PartKind> = new Set(['looseTenon', 'pad']);

/** Every board that is milled. */
export function boardsOf({ assembly }: CheckContext): ShopPiece[] {
  const byMark = new Map(assembly.parts.map((p) => [p.mark, p.id]));
  return cutList(assembly)
    .rows.filter((row) => !SMALL.has(row.kind))
    .map(({ name, marks, kind, rough, finished }) => ({
      name,
      marks,
      kind,
      part: byMark.get(marks[0]!)!,
      rough,
      finished,
    }));
}

/** Pieces that are sawn and routed to a line that is not a rectangle; a glued panel as a whole. */
export const shapedOf = ({ assembly }: CheckContext): ShopPiece[] => visibleParts(assembly).filter(isShaped).map(piece);

const piece = (part: Part): ShopPiece => ({
  name: part.name,
  marks: [part.mark],
  kind: part.kind,
  part: part.id,
  rough: part.rough,
  finished: part.finished,
});

/** A corner that is off the square by less than this is square, mm. */
const SQUARE: Mm = 1e-6;

function isShaped({ body }: Part): boolean {
  if (body.kind !== 'prism') return false;
  const { outline } = body;
  return (
    outline.length !== 4 ||
    outline.some((p, k) => {
      const q = outline[(k + 1) % 4]!;
      return p.bulge !== undefined || (Math.abs(p.x - q.x) > SQUARE && Math.abs(p.y - q.y) > SQUARE);
    })
  );
}

/** A mortise and the part that it is cut into. */
export interface PlacedMortise {
  readonly part: Part;
  readonly mortise: Mortise;
}

/** The mortises of every piece of wood. */
export const mortisesOf = ({ assembly }: CheckContext): PlacedMortise[] =>
  assembly.parts.flatMap((part) => part.features.flatMap((f) => (f.kind === 'mortise' ? [{ part, mortise: f }] : [])));
