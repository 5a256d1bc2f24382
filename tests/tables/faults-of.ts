import { checkContext } from '../../lib/build/job.ts';
import { cutsInStock } from '../../lib/derive/checks/cuts-in-stock.ts';
import { fitTogether } from '../../lib/derive/checks/fit-together.ts';
import { cutList } from '../../lib/derive/cut-list/cut-list.ts';
import { type Shape, shapesOf } from '../../lib/derive/solids/shapes.ts';
import { openEdges, volumeOf } from '../../lib/derive/solids/solid.ts';
import { blankOf } from '../../lib/derive/solids/solid-of.ts';
import type { Triangles } from '../../lib/derive/solids/triangulate.ts';
import { type Assembly, partOf, pieces } from '../../lib/model/assembly.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { isGlueUp } from '../../lib/model/part.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import type { TrestleValues } from '../../lib/tables/trestle/values.ts';
import { DESIGNS } from '../written.ts';
import type { Sample } from './random-values.ts';

/** Sides of triangles that do not have exactly one triangle on each hand. */
function openSides(triangles: Triangles): number {
  const open = new Set<number>();
  let twice = 0;
  for (let t = 0; t < triangles.length; t++) {
    const [i, j] = [triangles[t]!, triangles[t % 3 === 2 ? t - 2 : t + 1]!];
    if (open.delete(j * 2 ** 24 + i)) continue;
    if (open.has(i * 2 ** 24 + j)) twice += 1;
    open.add(i * 2 ** 24 + j);
  }
  return open.size + twice;
}

function shapeFaults(id: string, { solid, triangles }: Shape): string[] {
  const found: string[] = [];
  const edges = openEdges(solid).length;
  if (edges > 0) found.push(`${id}: ${edges} open edges`);
  const sides = edges > 0 ? 0 : openSides(triangles);
  if (sides > 0) found.push(`${id}: ${sides} open sides of triangles`);
  if (!(volumeOf(solid) > 0)) found.push(`${id}: volume ${volumeOf(solid)}`);
  return found;
}

/** Glued parts whose members are not as much wood as they are. */
const gluedFaults = (assembly: Assembly): string[] =>
  assembly.parts.filter(isGlueUp).flatMap((whole) => {
    const volume = (id: string): number => volumeOf(blankOf(partOf(assembly, id)));
    const sum = whole.members.reduce((all, id) => all + volume(id), 0);
    return Math.abs(sum / volume(whole.id) - 1) < 1e-9 ? [] : [`${whole.id}: its members are ${sum} mm³`];
  });

/** Rows of the cut list that do not add up to every piece once. */
function listFaults(assembly: Assembly): string[] {
  const list = cutList(assembly);
  const marks = list.rows.flatMap((row) => row.marks);
  const all = pieces(assembly).map((part) => part.mark);
  const found = list.rows.filter((row) => row.quantity !== row.marks.length).map((row) => `${row.name}: quantity`);
  if (marks.toSorted().join() !== all.toSorted().join()) found.push('the cut list does not hold every piece once');
  if (list.pieces !== all.length) found.push(`the cut list counts ${list.pieces} pieces`);
  return found;
}

/** A cut that a check says cannot be made, "part feature". Only such a cut may be refused, or let pieces collide. */
const saidOf = (findings: readonly Finding[]): Set<string> =>
  new Set(findings.filter((f) => f.verdict === 'change it').map((f) => `${f.part} ${f.where}`));

/** Cuts that the mortises of a tenon are, "part feature". */
const mortisesOf = (assembly: Assembly, tenon: string): string[] =>
  assembly.joints.flatMap((joint) => {
    const n = joint.tenons.indexOf(tenon);
    return n < 0 ? [] : joint.sides.map((side) => `${side.part} ${side.features[n]}`);
  });

/**
 * What is wrong with a table that its rules allow, in words: a solid that is not closed, a cut that is not made, pieces in
 * one another or in the air, wood that does not add up. A check that says "change it" of the cut excuses it.
 */
export function faultsOf({ design, values }: Sample, assembly = trestleTable(values)): string[] {
  const shapes = shapesOf(assembly);
  const context = checkContext(DESIGNS[design], values as never, assembly, defineShop());
  const unfit = fitTogether.run(context).filter((f) => f.verdict !== 'ok');
  const solids = [...shapes].flatMap(([id, shape]) => shapeFaults(id, shape).map((fault) => ({ id, fault })));
  const refused = [...shapes].flatMap(([id, shape]) => shape.refused.map((r) => `${id} ${r.feature}`));
  const questions = unfit.length + solids.length + refused.length > 0;
  const said = questions ? saidOf(cutsInStock.run(context)) : new Set<string>();
  const excused = (id: string): boolean => [...said].some((cut) => cut.startsWith(`${id} `));
  const excusedTenon = (id: string | undefined): boolean =>
    id !== undefined && mortisesOf(assembly, id).some((cut) => said.has(cut));
  return [
    ...solids.filter(({ id }) => !excused(id)).map(({ fault }) => fault),
    ...refused.filter((cut) => !said.has(cut)).map((cut) => `${cut} is not made`),
    ...unfit.filter((f) => !excusedTenon(f.part) && !excusedTenon(f.where)).map((f) => f.because),
    ...gluedFaults(assembly),
    ...listFaults(assembly),
  ];
}

/** The same, with what is thrown on the way as a fault of its own. */
export function faultsOrThrown(sample: Sample, compose: (values: TrestleValues) => Assembly = trestleTable): string[] {
  try {
    return faultsOf(sample, compose(sample.values));
  } catch (error) {
    return [`thrown: ${(error as Error).message}`];
  }
}
