import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearLengths } from '../../lib/params/near-value.ts';
import { parseLength } from '../../lib/units/parse-length.ts';
import { read, spec } from './sample-spec.ts';

const RUN = { seed: 20_252, numRuns: 2_000 };

const texts = fc.oneof(
  fc.tuple(fc.integer({ min: -10, max: 5000 }), fc.constantFrom('', ' in', ' mm', ' ft', ' %')).map((t) => t.join('')),
  fc.integer({ min: 0, max: 800 }).map((n) => `${n}/64 in`),
  fc.constantFrom(
    '',
    'chery',
    'wallnut',
    'whiteoak',
    'nope',
    'yes',
    'no',
    '2.5',
    '5 in, 6',
    '1 in, 99 in, 3',
    '0.1 mm',
  ),
);

test('what a problem says to try is accepted', () => {
  let tried = 0;
  fc.assert(
    fc.property(fc.constantFrom(...spec.table.keys()), texts, (path, text) => {
      const { issues = [] } = read({}, `${path}=${text}`);
      for (const issue of issues) {
        if (issue.try === undefined) continue;
        tried++;
        const kept = issue.path === path ? [] : [`${path}=${text}`];
        expect(read({}, ...kept, `${issue.path}=${issue.try}`).issues).toBeUndefined();
      }
    }),
    RUN,
  );
  expect(tried).toBeGreaterThan(500);
});

test('it is accepted beside the other values, too', () => {
  const inches = fc.integer({ min: 1, max: 400 }).map((n) => `${n}/64 in`);
  fc.assert(
    fc.property(inches, inches, (thickness, edgeThickness) => {
      const { issues = [] } = read({ top: { thickness } }, `top.edgeThickness=${edgeThickness}`);
      const [issue] = issues;
      if (issues.length !== 1 || issue?.try === undefined) return;
      const values = { thickness, edgeThickness, [issue.path.slice('top.'.length)]: issue.try };
      expect(read({ top: values }).issues).toBeUndefined();
    }),
    RUN,
  );
});

test('lengths to try lie inside the limits, on the side that was crossed', () => {
  const mm = fc.double({ min: 1e-6, max: 2000, noNaN: true });
  const sorted = fc.tuple(mm, mm, mm).map((three) => three.toSorted((a, b) => a - b) as [number, number, number]);
  fc.assert(
    fc.property(sorted, fc.boolean(), fc.constantFrom('in', 'mm'), ([a, b, c], above, unit) => {
      const [min, max, value] = above ? [a, b, c] : [b, c, a];
      fc.pre(value < min || value > max);
      const tries = nearLengths({ min, max }, value, unit);
      expect(tries.length).toBeGreaterThan(0);
      for (const text of tries) {
        const read = parseLength(text);
        expect(read >= min && read <= max).toBe(true);
        expect(Math.abs(read - (value < min ? min : max))).toBeLessThan(25.4 + 3.2);
      }
    }),
    RUN,
  );
  expect(nearLengths({ min: 2, max: 1 }, 3, 'mm')).toEqual([]);
});
