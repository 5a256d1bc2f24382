/** Which folder of lib may import which others, besides itself: the floors of the house, upper ones first. */
export const LAYERS: Readonly<Record<string, readonly string[]>> = {
  units: [],
  geometry: ['units'],
  params: ['units'],
  wood: ['units'],
  shop: ['units', 'params'],
  model: ['units', 'geometry', 'wood'],
  drawing: ['units', 'geometry'],
  parts: ['units', 'geometry', 'wood', 'model'],
  joints: ['units', 'geometry', 'wood', 'model', 'parts'],
  tables: ['units', 'geometry', 'wood', 'model', 'params', 'parts', 'joints'],
  'derive/solids': ['units', 'geometry', 'model'],
  'derive/cut-list': ['units', 'wood', 'model', 'derive/solids'],
  'derive/checks': ['units', 'geometry', 'wood', 'shop', 'model', 'derive/solids', 'derive/cut-list'],
  'derive/templates': ['units', 'geometry', 'wood', 'model', 'drawing'],
  'derive/drawings': ['units', 'geometry', 'model', 'drawing', 'derive/solids'],
  'derive/what-if': ['units', 'model'],
  writers: ['units', 'geometry', 'model', 'drawing', 'derive/drawings', 'derive/what-if'],
  build: [
    'units',
    'geometry',
    'params',
    'wood',
    'shop',
    'model',
    'drawing',
    'derive/solids',
    'derive/cut-list',
    'derive/checks',
    'derive/templates',
    'derive/drawings',
    'derive/what-if',
    'writers',
  ],
};

/** Third-party packages and the one place that may import each. */
export const HOMES: Readonly<Record<string, readonly string[]>> = {
  '@jscad/modeling': ['writers/stl.ts'],
  '@jscad/stl-serializer': ['writers/stl.ts'],
  earcut: ['derive/solids/earcut.ts'],
  makerjs: ['derive/templates/outline.ts'],
};

/** What the library may never touch: the same input must give the same bytes, in Node and in a browser. */
export const FORBIDDEN: readonly RegExp[] = [
  /\bfrom 'node:/,
  /\bprocess\./,
  /\bconsole\./,
  /\bnew Date\b|\bDate\.now\b/,
  /\bMath\.random\b/,
  /\bIntl\.|\.toLocale/,
  /\bperformance\.now\b/,
  /\bsetTimeout\b|\bsetInterval\b/,
];
