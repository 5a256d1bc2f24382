import design from '../../designs/reading-table/design.ts';
import { shapeKey, shapesOf } from '../../lib/derive/solids/shapes.ts';
import { isPocket, type Pocket } from '../../lib/model/feature.ts';
import type { Part } from '../../lib/model/part.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';
import { tableText } from '../../lib/writers/table-text.ts';
import { ms, type Timing, time } from './clock.ts';
import { jscadPart } from './jscad-table.ts';
import { loadManifold, manifoldPart } from './manifold-table.ts';
import { openEdgeCount, type Triangulated } from './triangulated.ts';

/** The demo from its parameters to all its meshes: our face model, manifold-3d booleans and @jscad booleans. */
export async function solidsBench(): Promise<string> {
  const values = readValues(design.params, design.values).values!;
  const ours = time(() => void shapesOf(trestleTable(values)), 200);
  const distinct = [...new Map(trestleTable(values).parts.map((part) => [shapeKey(part), part])).values()];
  const pockets = (part: Part): Pocket[] => part.features.filter(isPocket);

  const shapes = shapesOf(trestleTable(values));
  const mine = distinct.map((part): Triangulated => {
    const { solid, triangles } = shapes.get(part.id)!;
    return { vertices: solid.vertices, triangles };
  });
  const kernel = await loadManifold();
  let solid: Triangulated[] = [];
  const manifold = time(() => {
    trestleTable(values);
    solid = distinct.map((part) => manifoldPart(kernel, part, pockets(part)));
  }, 12);
  let boolean: Triangulated[] = [];
  const jscad = time(() => {
    trestleTable(values);
    boolean = distinct.map((part) => jscadPart(part, pockets(part)));
  }, 6);

  const row = (name: string, t: Timing, made: readonly Triangulated[]): string[] => [
    name,
    ms(t.first),
    ms(t.median),
    `${(t.median / ours.median).toFixed(1)} x`,
    `${made.reduce((n, m) => n + m.triangles.length / 3, 0)}`,
    `${made.filter((m) => openEdgeCount(m) === 0).length} of ${made.length}`,
  ];
  const right = (head: string) => ({ head, align: 'right' as const });
  const columns = [{ head: '' }, right('first'), right('median'), right('ratio'), right('triangles'), right('closed')];
  const rows = [
    row('face model (ours)', ours, mine),
    row('manifold-3d booleans', manifold, solid),
    row('@jscad booleans', jscad, boolean),
  ];
  return `parameters to all meshes of the reading-room table\n${tableText(columns, rows)}`;
}
