import { describe, expect, test } from 'vitest';
import { LAYERS } from '../../lib/drawing/layers.ts';
import { DEFAULT_STYLE } from '../../lib/drawing/style.ts';
import { writeSvg } from '../../lib/writers/svg.ts';
import { LEG, LEG_TEXTS, poly } from '../drawing/samples.ts';
import { elements, parseXml } from '../readers/xml.ts';

const texts = (svg: string): readonly string[] =>
  elements(parseXml(svg))
    .filter((element) => element.name === 'text')
    .map((element) => element.text);

describe('a leg at full size', () => {
  const svg = writeSvg(LEG);
  const root = parseXml(svg);

  test('has real millimetres: width, height and view box agree', () => {
    const { width, height, viewBox } = root.attributes;
    const [left, top, wide, high] = viewBox!.split(' ').map(Number);
    expect(width).toBe(`${wide}mm`);
    expect(height).toBe(`${high}mm`);
    expect(wide).toBeGreaterThan(89 + 20);
    // The origin of the model is the origin of the file, y down: the foot of the leg is inside, its top at -347.5.
    expect(left).toBeLessThan(0);
    expect(top).toBeLessThan(-347.5);
    expect(top! + high!).toBeGreaterThan(0);
  });

  test('letters the same texts as the DXF file', () => {
    expect(texts(svg)).toEqual(['A1 & <left>', ...LEG_TEXTS]);
    expect(root.children[0]).toMatchObject({ name: 'title', text: 'Leg <A1> & mortise' });
  });

  test('has one group a layer, with its width, ink and dashes', () => {
    const groups = root.children.filter((element) => element.name === 'g');
    expect(groups.map((group) => group.attributes['data-layer'])).toEqual([
      'OUTLINE',
      'MORTISE',
      'BORE',
      'HIDDEN',
      'TEXT',
      'DIMENSION',
    ]);
    expect(groups[0]!.attributes).toMatchObject({ stroke: '#000000', 'stroke-width': '0.5' });
    expect(groups[3]!.attributes['stroke-dasharray']).toBe('3 0.75'); // 12 and 3 times 0.25 mm
    expect(groups[0]!.attributes['stroke-dasharray']).toBeUndefined();
  });

  test('draws the outline upside down and closed, and the bore where it is', () => {
    const all = elements(root);
    const outline = all.find((element) => element.name === 'path')!;
    expect(outline.attributes['d']).toBe('M0 0L89 0L89 -347.5L44.5 -346.25L0 -347.5L0 0Z');
    const bore = all.find((element) => element.name === 'circle')!;
    expect(bore.attributes).toEqual({ cx: '44.5', cy: '-100', r: '4' });
  });

  test('prints no -0, no exponent and three decimals at most', () => {
    expect(svg).not.toMatch(/-0(?![.\d])/);
    expect(svg).not.toMatch(/\d\.\d{4}|\de[-+]?\d/);
  });

  test('writes the same drawing the same way', () => {
    expect(writeSvg(LEG)).toBe(svg);
  });
});

test('text stands on the height it names: middle is half a capital above its baseline', () => {
  const text = {
    kind: 'text',
    layer: LAYERS.TEXT,
    text: 'H',
    at: [10, 20],
    height: 7.2,
    valign: 'middle',
    rotation: 90,
  } as const;
  const [made] = elements(parseXml(writeSvg({ ...LEG, entities: [text] }))).filter(
    (element) => element.name === 'text',
  );
  expect(made!.attributes['transform']).toBe('translate(13.6 -20) rotate(-90)');
  expect(made!.attributes['font-size']).toBe('10');
});

test('at 1:10 the part shrinks, lines and lettering do not', () => {
  const root = parseXml(writeSvg({ ...LEG, style: { ...DEFAULT_STYLE, scale: 10 } }));
  const all = elements(root);
  expect(all.find((element) => element.name === 'circle')!.attributes['r']).toBe('0.4');
  expect(all.find((element) => element.name === 'g')!.attributes['stroke-width']).toBe('0.5');
  const sizes = all
    .filter((element) => element.name === 'text')
    .map((element) => Number(element.attributes['font-size']));
  expect(sizes).toContain(Number((3.5 / 0.72).toFixed(3)));
});

test('fractions of an inch may be built from raised and lowered digits; other slashes stay', () => {
  const text = (words: string) => ({ kind: 'text', layer: LAYERS.TEXT, text: words, at: [0, 0], height: 3 }) as const;
  const drawing = {
    ...LEG,
    entities: [text('13 3/8" wide'), text('R15/64" (6)'), text('9/16 per 10'), text('1/2/3"')],
  };
  expect(texts(writeSvg(drawing, { fractions: 'built' }))).toEqual([
    '13\u00b3\u2044\u2088" wide',
    'R\u00b9\u2075\u2044\u2086\u2084" (6)',
    '9/16 per 10',
    '1/2/3"',
  ]);
  expect(texts(writeSvg(drawing))[0]).toBe('13 3/8" wide');
});

test('two spaces stay two', () => {
  const label = { kind: 'text', layer: LAYERS.TEXT, text: 'LEG A1  front', at: [0, 0], height: 5 } as const;
  const root = parseXml(writeSvg({ ...LEG, entities: [label] }));
  expect(root.attributes['xml:space']).toBe('preserve'); // SVG 1.1, section 10.15
  expect(elements(root).at(-1)!.text).toBe('LEG A1  front');
});

test('a window shows that part of the model and no margin', () => {
  const { attributes } = parseXml(writeSvg(LEG, { window: { min: [10, 20], max: [40, 120] } }));
  expect(attributes).toMatchObject({ width: '30mm', height: '100mm', viewBox: '10 -120 30 100' });
});

test('what cannot be drawn is an error that says so', () => {
  expect(() => writeSvg({ ...LEG, entities: [] })).toThrow('the drawing "Leg <A1> & mortise" has nothing in it');
  expect(() => writeSvg({ ...LEG, title: 'a\u0000b' })).toThrow('U+0000 cannot be written in XML');
  expect(() =>
    writeSvg({
      ...LEG,
      entities: [
        poly([[0, 0]]),
        poly([
          [1, 1],
          [2, 2],
        ]),
      ],
    }),
  ).toThrow('has 1 points; it needs two');
});
