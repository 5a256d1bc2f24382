import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../lib/drawing/drawing.ts';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { LINETYPES } from '../../lib/drawing/linetypes.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { printTags } from '../../lib/writers/dxf/tags.ts';
import { writeDxf } from '../../lib/writers/dxf.ts';
import { angular, LEG, linear, poly } from '../drawing/samples.ts';
import { dxfGroups, dxfRecords, type Group, values } from '../readers/dxf-groups.ts';

const all: Drawing = {
  ...LEG,
  entities: [
    ...LEG.entities,
    ...Object.values(LAYERS).map((layer, i) => ({
      ...poly([
        [0, i],
        [9, i],
      ]),
      layer,
    })),
  ],
};
const text = writeDxf(all);
const records = dxfRecords(text);

describe('the file as such', () => {
  test('is plain ASCII with CRLF after every line', () => {
    expect(/^[\x20-\x7e\r\n]*$/.test(text)).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
    expect(text.endsWith('  0\r\nEOF\r\n')).toBe(true);
  });

  test('writes the same drawing the same way', () => {
    expect(writeDxf(all)).toBe(text);
  });

  test('gives every record its own handle, below the next free one, and every owner exists', () => {
    const owned = records.map((record) => {
      const head = record[0]!.value;
      return { head, handle: values(record, head === 'DIMSTYLE' ? 105 : 5)[0], owner: values(record, 330)[0] };
    });
    const handles = owned.flatMap(({ head, handle }) => (handle !== undefined && head !== 'SECTION' ? [handle] : []));
    expect(handles.length).toBeGreaterThan(100);
    expect(new Set(handles).size).toBe(handles.length);
    const groups = dxfGroups(text);
    const seed = groups[groups.findIndex((group) => group.value === '$HANDSEED') + 1]!.value;
    for (const handle of handles) expect(Number.parseInt(handle, 16)).toBeLessThan(Number.parseInt(seed, 16));
    const known = new Set([...handles, '0']);
    for (const { head, owner } of owned) {
      if (owner !== undefined) expect(known.has(owner), `${head} belongs to ${owner}`).toBe(true);
    }
  });

  test('holds no date and no random id', () => {
    expect(text).not.toMatch(/\$TD|GUID/);
  });
});

describe('numbers', () => {
  const number = fc.double({ min: -1e7, max: 1e7, noNaN: true });

  test('have at most eight decimals, no exponent, no -0, and keep their value', () => {
    fc.assert(
      fc.property(number, (value) => {
        const line = printTags([[10, value]]).split('\r\n')[1]!;
        expect(line).toMatch(/^-?\d+\.\d{1,8}$/);
        expect(line).not.toMatch(/^-0\.0$/);
        expect(Math.abs(Number(line) - value)).toBeLessThanOrEqual(1e-8);
      }),
      { seed: 8, numRuns: 1000 },
    );
    expect(printTags([[10, -0]])).toBe(' 10\r\n0.0\r\n');
    expect(printTags([[10, -1e-12]])).toBe(' 10\r\n0.0\r\n');
  });

  test('that do not fit their group are refused', () => {
    expect(() => printTags([[10, Number.NaN]])).toThrow('NaN');
    expect(() => printTags([[10, 1e9]])).toThrow('1000000000 is too large');
    expect(() => printTags([[70, 1.5]])).toThrow('DXF group 70 holds a whole number, not 1.5');
    expect(() => printTags([[1, 'caf\u00e9']])).toThrow('plain characters');
  });
});

describe('tables', () => {
  const table = (kind: string) => records.filter((record) => record[0]!.value === kind);

  test('have a record for every layer, its width in hundredths of a millimetre', () => {
    const layers = new Map(table('LAYER').map((record) => [values(record, 2)[0], record]));
    for (const layer of Object.values(LAYERS)) {
      const record = layers.get(layer.name)!;
      expect(Number(values(record, 370)[0])).toBe(layer.width * 100);
      expect(values(record, 6)[0]!.toUpperCase()).toBe(layer.linetype);
    }
  });

  test('have a record for every linetype that a layer names, with its dashes for the narrow line', () => {
    const types = new Map(table('LTYPE').map((record) => [values(record, 2)[0], record]));
    const center = types.get('CENTER')!;
    expect(values(center, 49).map(Number)).toEqual([6, -0.75, 0.125, -0.75]); // 24, 3, 0.5, 3 times 0.25 mm
    expect(Number(values(center, 40)[0])).toBe(7.625);
    for (const name of Object.keys(LINETYPES))
      expect(types.has(name === 'CONTINUOUS' ? 'Continuous' : name)).toBe(true);
  });

  test('name a block record for every block', () => {
    const names = (kind: string): readonly string[] => table(kind).map((record) => values(record, 2)[0]!);
    expect(names('BLOCK')).toEqual(names('BLOCK_RECORD'));
    expect(table('BLOCK').filter((record) => values(record, 70)[0] === '1')).toHaveLength(8);
  });
});

test('dashes on a wider line are longer: entities carry the factor', () => {
  const wide = { ...LAYERS.HIDDEN, width: 0.5 };
  const made = dxfRecords(
    writeDxf({
      ...LEG,
      entities: [
        {
          ...poly([
            [0, 0],
            [9, 9],
          ]),
          layer: wide,
        },
      ],
    }),
  );
  const line = made.find((record) => record[0]!.value === 'LINE')!;
  expect(Number(values(line, 48)[0])).toBe(2);
});

describe('what the format cannot hold is refused, by name', () => {
  const drawing = (layer: (typeof LAYERS)['TEXT'] | { name: string; width: number }): Drawing => ({
    title: '',
    style: DEFAULT_STYLE,
    entities: [
      {
        ...poly([
          [0, 0],
          [9, 9],
        ]),
        layer: { ...LAYERS.TEXT, ...layer },
      },
    ],
  });

  test.each([
    [{ name: 'MORTISE/1', width: 0.25 }, '"MORTISE/1" is no layer name'],
    [{ name: 'PLUS', width: 0.27 }, 'layer PLUS is 0.27 mm wide'],
  ])('%o', (layer, message) => {
    expect(() => writeDxf(drawing(layer))).toThrow(message);
  });

  test('a line of one point', () => {
    expect(() => writeDxf({ ...LEG, entities: [poly([[1, 1]])] })).toThrow('has 1 points; it needs two');
  });

  test('a dimension whose text has a fraction character', () => {
    const dim = linear([0, 0], [9, 0], 0, [0, 9], { text: '13\u215c"' });
    expect(() => writeDxf({ ...LEG, entities: [dim] })).toThrow('"\u215c" (U+215C) cannot be written in DXF text');
  });
});

describe('single records', () => {
  const recordsOf = (entity: Drawing['entities'][number], kind: string) =>
    dxfRecords(writeDxf({ ...LEG, entities: [entity] })).filter((record) => record[0]!.value === kind);
  const at = (record: readonly Group[], code: number): readonly number[] =>
    [code, code + 10].map((one) => Number(values(record, one)[0]));

  test('a filled quadrilateral crosses its last two corners over, as the format wants', () => {
    const corners = [
      [0, 0],
      [4, 0],
      [4, 3],
      [0, 3],
    ] as const;
    const [solid] = recordsOf({ kind: 'solid', layer: LAYERS.GAUGE, corners }, 'SOLID');
    expect([10, 11, 12, 13].map((code) => at(solid!, code))).toEqual([
      [0, 0],
      [4, 0],
      [0, 3],
      [4, 3],
    ]);
  });

  test('a text that is aligned has both its place and the start of its baseline', () => {
    const [text] = recordsOf(
      { kind: 'text', layer: LAYERS.TEXT, text: 'AB', at: [50, 20], height: 10, align: 'right', valign: 'top' },
      'TEXT',
    );
    expect(at(text!, 11)).toEqual([50, 20]);
    expect(at(text!, 10)).toEqual([50 - 2 * 8.5, 10]);
    expect([values(text!, 72), values(text!, 73)]).toEqual([['2'], ['3']]);
  });

  test('an angle stores the place of its arc', () => {
    const [dim] = recordsOf(
      angular(
        [
          [0, 0],
          [50, 0],
        ],
        [
          [0, 0],
          [0, 50],
        ],
        [20, 21],
      ),
      'DIMENSION',
    );
    expect(at(dim!, 16)).toEqual([20, 21]);
  });
});

test('a reader opens the file on all of the drawing', () => {
  const made = writeDxf({
    ...LEG,
    entities: [
      poly([
        [-10, 5],
        [90, 5],
        [90, 45],
      ]),
    ],
  });
  const groups = dxfGroups(made);
  const variable = (name: string) => {
    const i = groups.findIndex((group) => group.value === name);
    return [groups[i + 1]!, groups[i + 2]!].map((group) => Number(group.value));
  };
  expect([variable('$EXTMIN'), variable('$EXTMAX')]).toEqual([
    [-10, 5],
    [90, 45],
  ]);
  const view = dxfRecords(made).find((record) => record[0]!.value === 'VPORT')!;
  expect([12, 22].map((code) => Number(values(view, code)[0]))).toEqual([40, 25]);
  expect(Number(values(view, 40)[0])).toBeGreaterThan(75); // 100 mm wide in a window of 4 : 3
});
