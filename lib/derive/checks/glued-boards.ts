import { heightAt } from '../../geometry/surface.ts';
import { type Assembly, partOf } from '../../model/assembly.ts';
import { isGlueUp, type Part } from '../../model/part.ts';
import type { Mm } from '../../units/mm.ts';
import { called } from './check.ts';

/** A board of a glue-up, all its layers together, as it is milled for gluing. */
export interface GluedBoard {
  readonly width: Mm;
  readonly thickness: Mm;
}

/** A panel as it lies in the clamps. */
export interface GlueUp {
  readonly part: Part;
  /** How many panels of this name there are. */
  readonly alike: number;
  /** mm, as finished: what is trimmed off needs no pressure. */
  readonly length: Mm;
  readonly width: Mm;
  /** From one edge to the other. */
  readonly boards: readonly GluedBoard[];
  /** mm of face that meets in each joint, flush at the show face, boards as milled. */
  readonly depths: readonly Mm[];
  /** The same once the underside is tapered, and the outer edges; absent for a panel of one thickness. */
  readonly tapered?: { readonly depths: readonly Mm[]; readonly edge: Mm; readonly slope: number };
}

/** "top T", "panel leg L1 (2 alike)". */
export const panelName = ({ part, alike }: GlueUp): string => `${called(part)}${alike > 1 ? ` (${alike} alike)` : ''}`;

/** All panels that are glued up from boards side by side, one of each name. */
export function glueUps(assembly: Assembly): GlueUp[] {
  const panels = assembly.parts.filter(isGlueUp).filter((p) => p.members.length > 1);
  const names = [...new Set(panels.map((p) => p.name))];
  return names.map((name) => {
    const same = panels.filter((p) => p.name === name);
    return glueUp(assembly, same[0]!, same.length);
  });
}

function glueUp(assembly: Assembly, part: Part & { readonly members: readonly string[] }, alike: number): GlueUp {
  const boards = boardsOf(part.members.map((id) => partOf(assembly, id)));
  const depths = boards.slice(1).map((b, k) => Math.min(b.thickness, boards[k]!.thickness));
  const { length, width } = part.finished;
  const tapered = taperedOf(part, boards);
  return { part, alike, length, width, boards, depths, ...(tapered ? { tapered } : {}) };
}

/** Boards that lie on each other count as one: they are glued face to face first. */
function boardsOf(members: readonly Part[]): GluedBoard[] {
  const columns = new Map<number, Part[]>();
  members.forEach((part, k) => {
    const place = part.body.kind === 'slice' ? part.body.from : k;
    columns.set(place, [...(columns.get(place) ?? []), part]);
  });
  return [...columns]
    .sort(([a], [b]) => a - b)
    .map(([, layers]) => ({
      width: layers[0]!.finished.width,
      thickness: layers.reduce((sum, p) => sum + p.finished.thickness, 0) + spare(layers),
    }));
}

/** What one face is still to lose; between layers it is gone before they are glued. */
const spare = (layers: readonly Part[]): Mm => Math.max(...layers.map((p) => p.rough.thickness - p.finished.thickness));

/** Panels that are thinner by less than this towards their edges are flat, mm. */
const FLAT: Mm = 0.01;

function taperedOf({ body }: Part, boards: readonly GluedBoard[]): GlueUp['tapered'] {
  if (body.kind !== 'panel') return undefined;
  const thickness = (y: Mm): Mm => heightAt(body.underside, body.length / 2, y);
  const half = body.width / 2;
  let y = -half;
  const depths = boards.slice(0, -1).map((b) => {
    y += b.width;
    return thickness(y);
  });
  const edge = Math.min(thickness(-half), thickness(half));
  const slope = Math.max(
    Math.abs(thickness(half) - thickness(half - 1)),
    Math.abs(thickness(1 - half) - thickness(-half)),
  );
  const all = [...depths, edge];
  return Math.max(...all) - Math.min(...all) < FLAT ? undefined : { depths, edge, slope };
}
