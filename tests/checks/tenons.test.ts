import { describe, expect, it } from 'vitest';
import { tenonFit } from '../../lib/derive/checks/tenon-fit.ts';
import { looseTenonJoint } from '../../lib/joints/loose-tenon-joint.ts';
import type { Assembly } from '../../lib/model/assembly.ts';
import { composition } from '../../lib/model/composition.ts';
import type { Mortise } from '../../lib/model/feature.ts';
import type { Finding } from '../../lib/model/finding.ts';
import { board } from '../../lib/parts/board.ts';
import { contextOf, handContext, ofPart, under, words } from './contexts.ts';
import { flat } from './trial-pieces.ts';

/** Two boards 30 mm thick, end to end, with one loose tenon 40 x 10, 20 deep in each; the second mortise has 1 mm of play. */
function joined(thickness = 30): Assembly {
  const c = composition('Trial piece');
  const [left, right] = ['left', 'right'].map((id, k) =>
    c.place(
      board({ kind: 'side', name: 'board', id, mark: `X${k + 1}`, wood: 'cherry', length: 200, width: 100, thickness }),
      flat(200 * k, 0, 0),
    ),
  );
  c.join(
    looseTenonJoint({
      id: 'joint',
      kind: 'frame',
      between: [left!, right!],
      spots: [{ origin: [200, 50, thickness / 2], x: [1, 0, 0], y: [0, 1, 0] }],
      tenon: { thickness: 10, width: 40, depth: 20, depthPlay: 1.5, endPlay: 0.5, edges: 'round' },
      wood: 'cherry',
      mark: () => 'N1',
      glueArea: 3000,
    }),
  );
  return c.done();
}

/** The same with the mortise of one board changed behind the joint's back. */
function spoiled(part: 'left' | 'right', change: (mortise: Mortise) => Partial<Mortise>): Assembly {
  const assembly = joined();
  return {
    ...assembly,
    parts: assembly.parts.map((p) =>
      p.id === part ? { ...p, features: p.features.map((f) => ({ ...f, ...change(f as Mortise) }) as Mortise) } : p,
    ),
  };
}

const misfits = (assembly: Assembly, units: 'in' | 'mm' = 'mm'): Finding[] =>
  under(tenonFit, 'tenon fit', handContext(assembly, units));

const aside =
  (by: number) =>
  (m: Mortise): Partial<Mortise> => ({ at: [m.at[0], m.at[1] + by, m.at[2]] });
const deeper =
  (by: number) =>
  (m: Mortise): Partial<Mortise> => ({ depth: m.depth + by });
const wider =
  (by: number) =>
  (m: Mortise): Partial<Mortise> => ({ width: m.width + by });
const longer =
  (by: number) =>
  (m: Mortise): Partial<Mortise> => ({ length: m.length + by });

describe('tenon fit', () => {
  it('is content with a joint as it is made', () => {
    expect(misfits(joined())).toEqual([]);
  });

  it('finds a mortise that is off the marks, in the tight part and in the loose one', () => {
    expect(misfits(spoiled('left', aside(1)))).toMatchObject([{ verdict: 'change it', part: 'left', where: 'joint' }]);
    expect(misfits(spoiled('left', aside(1)))[0]!.value).toBeCloseTo(-1, 9);
    // 0.5 mm of play at each end is lost on one side: the tenon goes in, but not where it is drawn.
    expect(misfits(spoiled('right', aside(0.3)))[0]!.value).toBeCloseTo(-0.3, 9);
    expect(misfits(spoiled('right', aside(-2)))[0]!.value).toBeCloseTo(-2, 9);
  });

  it('finds a mortise too shallow, too narrow, too short, and one too long; deeper or wider does no harm', () => {
    expect(misfits(spoiled('left', deeper(-2)))[0]!.value).toBeCloseTo(-0.5, 9); // 1.5 mm of play in the depth
    expect(misfits(spoiled('left', deeper(-1.5)))).toEqual([]);
    expect(misfits(spoiled('left', wider(-1)))[0]!.value).toBeCloseTo(-0.5, 9); // half on each cheek
    expect(misfits(spoiled('left', longer(-2)))[0]!.value).toBeCloseTo(-1, 9);
    expect(misfits(spoiled('left', longer(2)))[0]!.value).toBeCloseTo(-1, 9);
    expect(misfits(spoiled('left', deeper(2)))).toEqual([]);
  });

  it('says so, in inches and in millimetres', () => {
    expect(misfits(spoiled('left', aside(1)), 'in').map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X1: the tenon N1 does not lie in mortise joint as drawn; it is off by 1/16 in | cut both mortises of the joint from the same marks",
      ]
    `);
    expect(misfits(spoiled('left', aside(1)), 'mm').map(words)).toMatchInlineSnapshot(`
      [
        "change it | board X1: the tenon N1 does not lie in mortise joint as drawn; it is off by 1 mm | cut both mortises of the joint from the same marks",
      ]
    `);
  });

  it('has a fix that works: both mortises from the same marks', () => {
    const [left, right] = ['left', 'right'].map((part) => misfits(spoiled(part as 'left', aside(1)))[0]!.fixes);
    expect([left, right]).toEqual([
      ['cut both mortises of the joint from the same marks'],
      ['cut both mortises of the joint from the same marks'],
    ]);
    expect(misfits(spoiled('left', aside(0)))).toEqual([]);
  });

  it('says that there are no tenons', () => {
    const plain = { ...joined(), joints: [] };
    expect(misfits(plain).map(words)).toEqual(['ok | there are no loose tenons']);
  });
});

describe('tenon thickness', () => {
  const share = (thickness: number, units: 'in' | 'mm' = 'mm'): Finding =>
    under(tenonFit, 'tenon thickness', handContext(joined(thickness), units))[0]!;

  it('is content up to half of the thinner piece', () => {
    expect(share(30).value).toBeCloseTo(1 / 3, 9);
    expect(share(20)).toMatchObject({ verdict: 'ok', value: 0.5, limit: 0.5 });
    expect(share(19.9).verdict).toBe('look again');
    expect(share(16).value).toBeCloseTo(10 / 16, 9);
  });

  it('looks at the thinner of the two pieces of a design: a stretcher of 1 1/2 in with tenons of 7/8', () => {
    const findings = under(
      tenonFit,
      'tenon thickness',
      contextOf('reading-table', { 'frameJoint.tenonThickness': '7/8 in' }),
    );
    const stretcher = findings.filter((f) => f.part === 'stretcher');
    expect(stretcher.map((f) => [f.verdict, f.where])).toEqual([
      ['look again', 'stretcher/frame-a'],
      ['look again', 'stretcher/frame-b'],
    ]);
    expect(stretcher[0]!.value).toBeCloseTo(7 / 12, 9);
    expect(stretcher.map((f) => f.fixes)).toEqual([['use tenons 3/4 in thick'], ['use tenons 3/4 in thick']]);
    const mended = under(
      tenonFit,
      'tenon thickness',
      contextOf('reading-table', { 'frameJoint.tenonThickness': '3/4 in' }),
    );
    expect(mended.filter((f) => f.verdict !== 'ok')).toEqual([]);
  });

  it('takes a strip at its joint, where it is thickest on its outer side', () => {
    const findings = under(tenonFit, 'tenon thickness', contextOf('reading-table'));
    // 3/8 in of the 1.40625 in at the outermost joints.
    expect(ofPart(findings, 'top/strip-8').value).toBeCloseTo(0.375 / 1.40625, 9);
  });

  it('says so, in inches and in millimetres', () => {
    expect(words(share(16, 'in'))).toMatchInlineSnapshot(
      `"look again | board X1: the tenons of joint take 63 % of its thickness; up to 50 % is usual | use tenons 5/16 in thick"`,
    );
    expect(words(share(16, 'mm'))).toMatchInlineSnapshot(
      `"look again | board X1: the tenons of joint take 63 % of its thickness; up to 50 % is usual | use tenons 8 mm thick"`,
    );
    expect(words(share(30))).toMatchInlineSnapshot(
      `"ok | board X1: the tenons of joint take 34 % of its thickness; up to 50 % is usual"`,
    );
  });
});
