import { expect, it } from 'vitest';
import reading from '../../designs/reading-table/design.ts';
import { shapesOf } from '../../lib/derive/solids/shapes.ts';
import { shapesAsked } from '../../lib/derive/solids/shapes-asked.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { readValues } from '../../lib/params/read-values.ts';
import { trestleTable } from '../../lib/tables/trestle/trestle-table.ts';

const tableWith = (path: string, text: string): Assembly =>
  trestleTable(readValues(reading.params, reading.values, [{ path, text, from: 'a test' }]).values!);

it('gives the shapes that are made anew, change after change, and takes over what stays', () => {
  const ask = shapesAsked();
  const changes = [
    ['top.edgeThickness', '1 in'],
    ['top.edgeThickness', '1 1/4 in'],
    ['foot.length', '28 in'],
    ['top.length', '80 in'],
    ['edgeJoint.gauge', '1/2 in'],
  ] as const;
  for (const [path, text] of changes) {
    const assembly = tableWith(path, text);
    const asked = ask(assembly);
    for (const [id, { solid, triangles, refused }] of shapesOf(assembly)) {
      const shape = asked.get(id)!;
      expect(shape.solid, id).toEqual(solid);
      expect(shape.triangles).toEqual(triangles);
      expect(shape.refused).toEqual(refused);
    }
  }
  const before = ask(tableWith('foot.length', '28 in'));
  const strip = before.get('top/strip-1')!;
  const foot = before.get('frame-a/foot')!;
  const after = ask(tableWith('foot.length', '27 in'));
  expect(after.get('top/strip-1')).toBe(strip);
  expect(after.get('frame-a/foot')).not.toBe(foot);
  expect(after.get('no-such-part')).toBeUndefined();
});
