import type { Box } from '../../drawing/bounds.ts';
import type { Layer, Linetype } from '../../drawing/layer.ts';
import { LINETYPES } from '../../drawing/linetypes.ts';
import type { Style } from '../../drawing/style.ts';
import { DIM_STYLE, dimVarStyle } from './dim-vars.ts';
import type { Handles } from './handles.ts';
import { flatPoint, point, type Tag } from './tags.ts';
import { DASH_WIDTH, lineWeight } from './weights.ts';

/** Makes one record of a table, given its own handle and the table's. */
type Entry = (handle: string, table: string) => readonly Tag[];

/** A table: its head, its records, its end. */
function table(handles: Handles, name: string, entries: readonly Entry[], extra: readonly Tag[] = []): readonly Tag[] {
  const handle = handles.next();
  return [
    [0, 'TABLE'],
    [2, name],
    [5, handle],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, entries.length],
    ...extra,
    ...entries.flatMap((entry) => entry(handles.next(), handle)),
    [0, 'ENDTAB'],
  ];
}

/** What all records share: kind, handle, owner, class, name. Dimension styles alone keep their handle in group 105. */
const record =
  (kind: string, type: string, name: string, tags: readonly Tag[], fixed?: string): Entry =>
  (handle, owner) => [
    [0, kind],
    [kind === 'DIMSTYLE' ? 105 : 5, fixed ?? handle],
    [330, owner],
    [100, 'AcDbSymbolTableRecord'],
    [100, type],
    [2, name],
    ...tags,
  ];

function viewport(box: Box): Entry {
  const width = box.max[0] - box.min[0];
  const height = box.max[1] - box.min[1];
  const aspect = 4 / 3; // of the window; readers fit it to theirs
  return record('VPORT', 'AcDbViewportTableRecord', '*Active', [
    [70, 0],
    ...flatPoint(10, [0, 0]),
    ...flatPoint(11, [1, 1]),
    ...flatPoint(12, [(box.min[0] + box.max[0]) / 2, (box.min[1] + box.max[1]) / 2]),
    ...flatPoint(13, [0, 0]),
    ...flatPoint(14, [10, 10]),
    ...flatPoint(15, [10, 10]),
    ...flatPoint(16, [0, 0]),
    [36, 1],
    ...point(17, [0, 0]),
    [40, Math.max(height, width / aspect) * 1.05 || 100],
    [41, aspect],
    [42, 50],
    [43, 0],
    [44, 0],
    [50, 0],
    [51, 0],
    [71, 0],
    [72, 1000],
    [73, 1],
    [74, 3],
    [75, 0],
    [76, 0],
    [77, 0],
    [78, 0],
  ]);
}

function linetype(name: string, dash: readonly number[], picture: string): Entry {
  const lengths = dash.map((part, i) => part * DASH_WIDTH * (i % 2 === 0 ? 1 : -1));
  return record('LTYPE', 'AcDbLinetypeTableRecord', name, [
    [70, 0],
    [3, picture],
    [72, 65],
    [73, lengths.length],
    [40, lengths.reduce((sum, part) => sum + Math.abs(part), 0)],
    ...lengths.flatMap((part): Tag[] => [
      [49, part],
      [74, 0],
    ]),
  ]);
}

const layerRecord = (name: string, color: number, line: string, weight: number, handles: Handles): Entry =>
  record('LAYER', 'AcDbLayerTableRecord', name, [
    [70, 0],
    [62, color],
    [6, line],
    [370, weight],
    [390, handles.plotStyle],
  ]);

/** The tables: viewport, linetypes, layers, text style, application, dimension styles, and a record for each block. */
export function tables(
  handles: Handles,
  style: Style,
  layers: readonly Layer[],
  box: Box,
  blocks: readonly Entry[],
): readonly Tag[] {
  const broken = (Object.keys(LINETYPES) as Linetype[]).filter((name) => name !== 'CONTINUOUS');
  const dimStyle = (name: string): Entry =>
    record('DIMSTYLE', 'AcDbDimStyleTableRecord', name, [[70, 0], ...dimVarStyle(style), [340, handles.textStyle]]);
  const textStyle: readonly Tag[] = [
    [70, 0],
    [40, 0],
    [41, 1],
    [50, 0],
    [71, 0],
    [42, style.textHeight * style.scale],
    [3, 'txt'],
    [4, ''],
  ];
  return [
    ...table(handles, 'VPORT', [viewport(box)]),
    ...table(handles, 'LTYPE', [
      ...['ByBlock', 'ByLayer', 'Continuous'].map((name) => linetype(name, [], '')),
      ...broken.map((name) => linetype(name, LINETYPES[name].dash, LINETYPES[name].picture)),
    ]),
    ...table(handles, 'LAYER', [
      layerRecord('0', 7, 'Continuous', -3, handles),
      ...layers.map((one) =>
        layerRecord(
          one.name,
          one.ink.index,
          one.linetype === 'CONTINUOUS' ? 'Continuous' : one.linetype,
          lineWeight(one),
          handles,
        ),
      ),
    ]),
    ...table(handles, 'STYLE', [record('STYLE', 'AcDbTextStyleTableRecord', 'Standard', textStyle, handles.textStyle)]),
    ...table(handles, 'VIEW', []),
    ...table(handles, 'UCS', []),
    ...table(handles, 'APPID', [record('APPID', 'AcDbRegAppTableRecord', 'ACAD', [[70, 0]])]),
    ...table(handles, 'DIMSTYLE', [dimStyle('Standard'), dimStyle(DIM_STYLE)], [[100, 'AcDbDimStyleTable']]),
    ...table(handles, 'BLOCK_RECORD', blocks),
  ];
}

/** A record of a block, its handle already given, since the block and what is in it refer to it. */
export const blockRecord = (name: string, handle: string, layout: string): Entry =>
  record('BLOCK_RECORD', 'AcDbBlockTableRecord', name, [[340, layout]], handle);
