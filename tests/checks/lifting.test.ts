import { describe, expect, it } from 'vitest';
import { lifting } from '../../lib/derive/checks/lifting.ts';
import { defineShop } from '../../lib/shop/shop.ts';
import { DESIGN_NAMES } from '../written.ts';
import { words } from './contexts.ts';
import { at, GOLDEN, LIGHTER, tried } from './tried.ts';

const hands = (people: number, perPerson?: string) => ({
  shop: defineShop({ hands: { people, ...(perPerson ? { perPerson } : {}) } }),
});

describe('lifting', () => {
  it('weighs the top of the check values with 52.0 kg and the whole with 72.7', () => {
    const findings = lifting.run(tried('reading-table', GOLDEN));
    expect(at(findings, 'lifting', 'top').value).toBeCloseTo(52.03221, 4);
    expect(Math.abs(at(findings, 'lifting', 'whole').value! / 72.70306 - 1)).toBeLessThan(LIGHTER);
  });

  it('lets two people lift 33.3 kg together, three 37.5, and more no more', () => {
    const limits = [1, 2, 3, 4, 8].map((n) => lifting.run(tried('reading-table', {}, hands(n)))[0]!.limit!);
    expect(limits.map((kg) => kg.toFixed(1))).toEqual(['25.0', '33.3', '37.5', '37.5', '37.5']);
  });

  it('says what is too heavy, and what to do', () => {
    expect(lifting.run(tried('reading-table')).map(words)).toMatchInlineSnapshot(`
      [
        "look again | top T out of the clamps: 137 lb; by the rule for team lifts 2 people lift 73 lb together | slide it on edge, or use a trolley: even 3 people lift only 82 lb",
        "look again | top T: 115 lb; by the rule for team lifts 2 people lift 73 lb together | slide it on edge, or use a trolley: even 3 people lift only 82 lb",
        "look again | the whole piece: 163 lb; by the rule for team lifts 2 people lift 73 lb together | carry it in parts, or use a trolley: even 3 people lift only 82 lb",
      ]
    `);
    expect(lifting.run(tried('reading-stool')).map(words)).toMatchInlineSnapshot(`
      [
        "ok | the whole piece: 14 lb; by the rule for team lifts 2 people lift 73 lb together",
      ]
    `);
  });

  it('asks for a third person where three are enough', () => {
    const [found] = lifting.run(
      tried('reading-table', {
        'top.length': '76 in',
        'top.thickness': '1 3/8 in',
        'top.edgeThickness': '3/4 in',
        'edgeJoint.tenons': 'no',
        'fixing.penetration': '1/2 in',
      }),
    );
    expect(words(found!)).toMatchInlineSnapshot(
      `"look again | top T out of the clamps: 79 lb; by the rule for team lifts 2 people lift 73 lb together | 3 people lift 82 lb together"`,
    );
  });

  it('is content with enough hands', () => {
    const strong = lifting.run(tried('reading-table', {}, hands(3, '60 kg')));
    expect(strong.map((f) => f.verdict)).toEqual(['ok', 'ok', 'ok']);
  });

  it.each(DESIGN_NAMES)('is advice: of the %s it never says "change it"', (name) => {
    expect(lifting.run(tried(name, {}, hands(1, '5 kg'))).map((f) => f.verdict)).not.toContain('change it');
  });
});
