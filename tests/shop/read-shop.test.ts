import { describe, expect, it } from 'vitest';
import { readDesign } from '../../lib/build/read-design.ts';
import { IssuesError } from '../../lib/params/issues-error.ts';
import { renderIssue, renderIssues } from '../../lib/params/render-issue.ts';
import { defineLoads, readLoads } from '../../lib/shop/loads.ts';
import { defineShop, readShop } from '../../lib/shop/shop.ts';
import { defineSite, readSite } from '../../lib/shop/site.ts';

const GIVEN = { clamps: { short: { count: 2.5, reach: '2 ft' } }, hands: { people: 0 }, glue: {} };

describe('the shop, whatever a file gives', () => {
  it('is read as values', () => {
    expect(readShop({ clamps: { short: { reach: '2 ft' } } }).values?.clamps.short).toEqual({ reach: 609.6, count: 8 });
    expect(readShop(undefined).values).toEqual(defineShop());
  });

  it('is refused as data, all at once, and tells what to write into the file', () => {
    const { issues } = readShop(GIVEN, 'designs/shop.ts');
    expect(issues?.map(({ code, path }) => [code, path])).toEqual([
      ['not-whole', 'clamps.short.count'],
      ['out-of-range', 'hands.people'],
      ['unknown-group', 'glue'],
    ]);
    expect(renderIssues(issues!, 'in', 'nothing was done')).toMatchInlineSnapshot(`
      "error: clamps.short.count is 2.5; it must be a whole number, 0 to 200
             given by designs/shop.ts
             try clamps: { short: { count: 3 } }

      error: hands.people is 0; it must be 1 to 12
             given by designs/shop.ts
             try hands: { people: 1 }

      error: there is no group glue
             there are machines, clamps, gluing, hands and lumber
             given by designs/shop.ts

      3 problems; nothing was done"
    `);
  });

  it.each([[null], [3], ['shop'], [[]]])('is refused when it is %j', (given) => {
    const { issues } = readShop(given);
    expect(issues).toMatchObject([{ code: 'group-as-parameter', path: '' }]);
  });

  it('throws the same issues where a design file defines it', () => {
    expect(() => defineShop(GIVEN as never)).toThrow(IssuesError);
    try {
      defineShop(GIVEN as never);
    } catch (error) {
      expect((error as IssuesError).issues).toEqual(readShop(GIVEN).issues);
      expect((error as IssuesError).message).toContain('the shop cannot be read\nerror: clamps.short.count is 2.5');
      expect((error as IssuesError).message).not.toContain('--set');
    }
  });
});

describe('site and loads', () => {
  it('are read and refused with their place in the design', () => {
    expect(readSite({ room: { length: '16 ft' } }).values?.site.room.length).toBe(4876.8);
    expect(readSite({ room: { length: 'long' } }).issues).toMatchObject([{ path: 'site.room.length', via: 'file' }]);
    expect(readLoads({ lean: '600 N' }).values?.loads.lean).toBe(600);
    expect(readLoads({ lean: 600, jump: 3 }).issues).toMatchObject([{ code: 'unknown', path: 'loads.jump' }]);
    expect(() => defineSite({ room: { width: -3 } })).toThrow(IssuesError);
    expect(() => defineLoads({ lift: 0 })).toThrow('loads.lift is 0; it must be 1 to 10');
  });

  it('are looked at when a design is loaded, with all else that is wrong', () => {
    const { issues = [] } = readDesign({ default: { title: '', site: 3, loads: { lean: '9 kN' } } }, 'd.ts');
    expect(issues.map(({ path }) => path)).toEqual([
      'title',
      'revision',
      'date',
      'units',
      'params',
      'values',
      'compose',
      'site',
      'loads.lean',
    ]);
    expect(renderIssue(issues[0]!, 'in')).toBe(
      'error: title is ""; it must be a text: what the piece is called\n       given by d.ts',
    );
    expect(renderIssue(issues[8]!, 'in')).toContain("try loads: { lean: '");
  });
});
