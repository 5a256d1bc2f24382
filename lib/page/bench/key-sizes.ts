import { heightAt } from '../../geometry/surface.ts';
import type { PanelBody } from '../../model/body.ts';
import { formatLength, formatNumber, type UnitSystem } from '../../units/format-length.ts';
import { formatMass } from '../../units/format-load.ts';
import type { Piece } from './piece.ts';

/** One number of the piece, as text. */
export interface KeySize {
  readonly name: string;
  readonly text: string;
}

/** What a maker asks first: sizes over all, wood, weight, and how thick the top is where it counts. */
export function keySizes(piece: Piece, units: UnitSystem): readonly KeySize[] {
  const { overall, pieces, mass, boardFeet, glueUps } = piece.numbers();
  const { boardFeetRough } = piece.cutList();
  const size = (mm: number): string => formatLength(mm, units, 'nearest', 32);
  const named = (id: string): string => piece.assembly.parts.find((part) => part.id === id)!.name;
  const glued = new Map(Object.entries(glueUps).map(([id, glueUp]) => [named(id), formatMass(glueUp.mass, units)]));
  return [
    { name: 'length over all', text: size(overall.length) },
    { name: 'width over all', text: size(overall.width) },
    { name: 'height', text: size(overall.height) },
    { name: 'mass', text: formatMass(mass, units) },
    ...[...glued].map(([name, text]) => ({ name: `mass of the ${name}`, text })),
    { name: 'wood in it', text: feet(boardFeet) },
    { name: 'wood on the saw, rough', text: feet(boardFeetRough) },
    { name: 'pieces', text: `${pieces}` },
    ...thicknesses(piece, size),
  ];
}

const feet = (value: number): string => `${formatNumber(value, 1)} board feet`;

/** Thickness of a panel with a worked underside: on the center line, at every glue line, at the long edge; half way along. */
function thicknesses({ assembly }: Piece, size: (mm: number) => string): KeySize[] {
  const panel = assembly.parts.find((part) => part.body.kind === 'panel');
  if (!panel) return [];
  const { length, width, underside } = panel.body as PanelBody;
  const sides = [0.5 * width, ...gluedAt(panel.members ?? [], assembly)].map((y) => Number(y.toFixed(6)));
  const across = [...new Set([0, ...sides.map(Math.abs)])].sort((a, b) => a - b);
  return across.map((y) => {
    const [left, right] = [-y, y].map((side) => size(heightAt(underside, length / 2, side)));
    const place =
      y === 0 ? 'on the center line' : y === across.at(-1) ? 'at the long edges' : `${size(y)} from the center line`;
    return { name: `${panel.name}, thick ${place}`, text: left === right ? left! : `${left} left, ${right} right` };
  });
}

/** Where the strips of a panel meet, mm from the center line. */
function gluedAt(members: readonly string[], { parts }: Piece['assembly']): number[] {
  return parts.flatMap(({ id, body }) => (members.includes(id) && body.kind === 'slice' ? [body.from, body.to] : []));
}
