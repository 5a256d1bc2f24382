import type { Box } from '../../drawing/bounds.ts';
import type { Handles } from './handles.ts';
import { flatPoint, point, type Tag } from './tags.ts';

/** Classes of the objects below that are not built into the format. */
export const CLASSES: readonly Tag[] = [
  ['ACDBDICTIONARYWDFLT', 'AcDbDictionaryWithDefault'],
  ['ACDBPLACEHOLDER', 'AcDbPlaceHolder'],
  ['LAYOUT', 'AcDbLayout'],
].flatMap(([name, type]): Tag[] => [
  [0, 'CLASS'],
  [1, name!],
  [2, type!],
  [3, 'ObjectDBX Classes'],
  [90, 0],
  [280, 0],
  [281, 0],
]);

const dictionary = (handle: string, owner: string, entries: readonly (readonly [string, string])[]): readonly Tag[] => [
  [0, 'DICTIONARY'],
  [5, handle],
  [330, owner],
  [100, 'AcDbDictionary'],
  [281, 1],
  ...entries.flatMap(([name, entry]): Tag[] => [
    [3, name],
    [350, entry],
  ]),
];

interface Layout {
  readonly name: string;
  readonly handle: string;
  readonly record: string;
  readonly tab: number;
  readonly flags: number;
}

/** A layout without a plotter and without a paper: nothing but the name that readers look for. */
function layout(one: Layout, owner: string, box: Box): readonly Tag[] {
  const zeros = (...codes: readonly number[]): Tag[] => codes.map((code): Tag => [code, 0]);
  return [
    [0, 'LAYOUT'],
    [5, one.handle],
    [330, owner],
    [100, 'AcDbPlotSettings'],
    [1, ''],
    [2, 'none_device'],
    [4, ''],
    [6, ''],
    ...zeros(40, 41, 42, 43, 44, 45, 46, 47, 48, 49, 140, 141),
    [142, 1],
    [143, 1],
    [70, one.flags],
    [72, 1],
    [73, 0],
    [74, 5],
    [7, ''],
    [75, 16],
    [147, 1],
    [148, 0],
    [149, 0],
    [100, 'AcDbLayout'],
    [1, one.name],
    [70, 1],
    [71, one.tab],
    ...flatPoint(10, box.min),
    ...flatPoint(11, box.max),
    ...point(12, [0, 0]),
    ...point(14, box.min),
    ...point(15, box.max),
    [146, 0],
    ...point(13, [0, 0]),
    ...point(16, [1, 0]),
    ...point(17, [0, 1]),
    [76, 0],
    [330, one.record],
  ];
}

/** The objects: the root dictionary, an empty group dictionary, the two layouts, and one plot style. */
export function objects(handles: Handles, box: Box): readonly Tag[] {
  const [root, group, layouts, plots] = [handles.next(), handles.next(), handles.next(), handles.next()];
  const model: Layout = { name: 'Model', handle: handles.modelLayout, record: handles.modelSpace, tab: 0, flags: 1024 };
  const paper: Layout = { name: 'Layout1', handle: handles.paperLayout, record: handles.paperSpace, tab: 1, flags: 0 };
  return [
    ...dictionary(root, '0', [
      ['ACAD_GROUP', group],
      ['ACAD_LAYOUT', layouts],
      ['ACAD_PLOTSTYLENAME', plots],
    ]),
    ...dictionary(group, root, []),
    ...dictionary(layouts, root, [
      [model.name, model.handle],
      [paper.name, paper.handle],
    ]),
    [0, 'ACDBDICTIONARYWDFLT'],
    [5, plots],
    [330, root],
    [100, 'AcDbDictionary'],
    [281, 1],
    [3, 'Normal'],
    [350, handles.plotStyle],
    [100, 'AcDbDictionaryWithDefault'],
    [340, handles.plotStyle],
    [0, 'ACDBPLACEHOLDER'],
    [5, handles.plotStyle],
    [330, plots],
    ...layout(model, layouts, box),
    ...layout(paper, layouts, box),
  ];
}
