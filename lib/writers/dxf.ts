import { type Box, bounds } from '../drawing/bounds.ts';
import type { Dim } from '../drawing/dim.ts';
import type { Drawing } from '../drawing/drawing.ts';
import { explode } from '../drawing/explode.ts';
import type { Layer } from '../drawing/layer.ts';
import { layersOf } from '../drawing/layers-of.ts';
import { type Block, blockTags } from './dxf/blocks.ts';
import { dimensionTags } from './dxf/dimension.ts';
import { markTags } from './dxf/entities.ts';
import { type Handles, handles as newHandles } from './dxf/handles.ts';
import { header } from './dxf/header.ts';
import { CLASSES, objects } from './dxf/objects.ts';
import { blockRecord, tables } from './dxf/tables.ts';
import { printTags, section, type Tag } from './dxf/tags.ts';

const EMPTY: Box = { min: [0, 0], max: [0, 0] };

/** Names that every reader takes. */
const NAME = /^[A-Z0-9][A-Z0-9_-]{0,30}$/;

function checkNames(layers: readonly Layer[]): void {
  const bad = layers.find(({ name }) => !NAME.test(name) || name === '0');
  if (bad) throw new RangeError(`${JSON.stringify(bad.name)} is no layer name; write capitals, digits, - and _`);
}

/** A dimension and the block that pictures it. */
function dimension(dim: Dim, drawing: Drawing, name: string, handles: Handles): { block: Block; tags: readonly Tag[] } {
  const exploded = explode(dim, drawing.style);
  const record = handles.next();
  const entities = exploded.entities.flatMap((mark) => markTags(mark, drawing.style.scale, handles, record));
  return {
    block: { name, record, layout: '0', entities },
    tags: dimensionTags(dim, drawing.style, exploded, name, handles, handles.modelSpace),
  };
}

/**
 * A drawing as DXF R2000, in millimetres: real dimensions with their pictures, layers with line widths and dashes.
 * Plain ASCII. The title is not written: the format has no place for it that readers agree on.
 *
 * @throws RangeError for lettering, layer names and line widths that the format cannot hold.
 */
export function writeDxf(drawing: Drawing): string {
  const { style, entities } = drawing;
  const layers = layersOf(entities);
  checkNames(layers);
  const handles = newHandles();
  const box = bounds(drawing) ?? EMPTY;
  const spaces: readonly Block[] = [
    { name: '*Model_Space', record: handles.modelSpace, layout: handles.modelLayout, entities: [] },
    { name: '*Paper_Space', record: handles.paperSpace, layout: handles.paperLayout, entities: [] },
  ];
  const pictures: Block[] = [];
  const body = entities.flatMap((entity): readonly Tag[] => {
    if (entity.kind !== 'dim') return markTags(entity, style.scale, handles, handles.modelSpace);
    const { block, tags } = dimension(entity, drawing, `*D${pictures.length + 1}`, handles);
    pictures.push(block);
    return tags;
  });
  const blocks = [...spaces, ...pictures];
  const records = blocks.map((block) => blockRecord(block.name, block.record, block.layout));
  const rest = [
    ...section('CLASSES', CLASSES),
    ...section('TABLES', tables(handles, style, layers, box, records)),
    ...section(
      'BLOCKS',
      blocks.flatMap((block) => blockTags(block, handles)),
    ),
    ...section('ENTITIES', body),
    ...section('OBJECTS', objects(handles, box)),
  ];
  const head = section('HEADER', header(style, box, handles.next()));
  return printTags([...head, ...rest, [0, 'EOF']]);
}
