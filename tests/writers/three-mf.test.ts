import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { volumeOf } from '../../lib/derive/solids/solid.ts';
import type { Vec3 } from '../../lib/geometry/vec.ts';
import { elements, parseXml } from '../readers/xml.ts';
import { ofMesh, release } from '../solids/kernel.ts';
import { DESIGN_NAMES, written } from '../written.ts';

describe.each(DESIGN_NAMES)('assembly.3mf of %s', (name) => {
  it('holds closed objects of the right volume in millimetres, by name', async () => {
    const build = await written(name, {}, ['3mf']);
    const files = unzipSync(build.bytes('solids/assembly.3mf'));
    expect(Object.keys(files)).toEqual(['[Content_Types].xml', '_rels/.rels', '3D/3dmodel.model']);
    const text = new TextDecoder().decode(files['3D/3dmodel.model']).replace(/^<\?xml[^>]*\?>\s*/, '');
    const model = parseXml(text);
    expect(model.attributes['unit']).toBe('millimeter');
    const all = elements(model);
    const objects = all.filter((e) => e.name === 'object');
    const items = all.filter((e) => e.name === 'item');
    expect(items.map((i) => i.attributes['objectid'])).toEqual(objects.map((o) => o.attributes['id']));
    const byMark = new Map(build.job.assembly.parts.map((part) => [`${part.mark} ${part.name}`, part.id]));
    for (const object of objects) {
      const inside = elements(object);
      const numbers = (kind: string, keys: readonly string[]): number[][] =>
        inside.filter((e) => e.name === kind).map((e) => keys.map((k) => Number(e.attributes[k])));
      const vertices = numbers('vertex', ['x', 'y', 'z']) as unknown as Vec3[];
      const body = ofMesh(vertices, numbers('triangle', ['v1', 'v2', 'v3']).flat());
      const id = byMark.get(object.attributes['name']!)!;
      expect(Math.abs(body.volume() / volumeOf(build.job.shapes.get(id)!.solid) - 1), id).toBeLessThan(2e-5);
      release();
    }
  });
});
