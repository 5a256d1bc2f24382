import { describe, expect, test } from 'vitest';
import type { Job } from '../../lib/build/job.ts';
import { toOuter } from '../../lib/geometry/frame.ts';
import { partOf, placeOf } from '../../lib/model/assembly.ts';
import type { PrismBody } from '../../lib/model/body.ts';
import type { Pocket } from '../../lib/model/feature.ts';
import { measuredJob, moved } from './measured-jobs.ts';

const INCH = 25.4;
const SIXTEENTH = INCH / 16;

const both = (c: number) => moved({ left: { c }, right: { c } });

/** Height of the upper edge of a scribed part at its ends, left and right as the table stands, mm over the floor. */
function endsOf({ assembly }: Job, id: string): { left: number; right: number } {
  const { outline } = partOf(assembly, id).body as PrismBody;
  const at = outline.map((p) => toOuter(placeOf(assembly, id), [p.x, p.y, 0]));
  const upper = (side: 1 | -1): number => {
    const edge = Math.max(...at.map((p) => side * p[1]));
    return Math.max(...at.filter((p) => Math.abs(side * p[1] - edge) < 1e-6).map((p) => p[2]));
  };
  return { left: upper(1), right: upper(-1) };
}

/** The pilot hole of a fixing in the strip it goes into: mm below the show face at its mouth, and how deep it is. */
function pilotOf({ assembly }: Job, n: number): { mouth: number; depth: number } {
  const { into, pilotFeature } = assembly.fixings.find((f) => f.id === `frame-a/fixing-${n}`)!;
  const pocket = partOf(assembly, into).features.find((f) => f.id === pilotFeature) as Pocket;
  return { mouth: pocket.at[2], depth: pocket.depth as number };
}

const coverOf = ({ findings }: Job, part: string): number =>
  findings.find((f) => f.check === 'slot cover' && f.part === part && /under its slots/.test(f.because))!.value!;

const lengthOf = ({ assembly }: Job, id: string): number => partOf(assembly, id).finished.length;

describe('a top that came out 1/16 in thinner moves everything that meets it', () => {
  const nominal = measuredJob('reading-table', (s) => s);
  const thin = measuredJob('reading-table', both(-SIXTEENTH));
  const left = measuredJob('reading-table', moved({ left: { c: -SIXTEENTH } }));

  test('readings of the nominal underside change nothing', () => {
    expect(lengthOf(nominal, 'frame-a/post-1')).toBeCloseTo(
      lengthOf({ ...nominal, assembly: nominal.nominal }, 'frame-a/post-1'),
      9,
    );
    expect(nominal.fit!.surface.planes.map((p) => p.c)).toEqual([expect.closeTo(57.15, 9), expect.closeTo(57.15, 9)]);
  });

  test('posts are longer, and foot, post, bearer and top still make up the height', () => {
    // Source: the height of the table is 29 1/2 in whatever the top; 1/16 in less top is 1/16 in more base.
    for (const post of ['frame-a/post-1', 'frame-b/post-2']) {
      expect(lengthOf(thin, post) - lengthOf(nominal, post)).toBeCloseTo(SIXTEENTH, 9);
    }
    // At the bearer end, 15 in from the center line: 3 + post + 3 1/2 + t(15) = 29 1/2.
    const sum = 3 * INCH + lengthOf(thin, 'frame-a/post-1') + 3.5 * INCH + (2.25 - 0.05625 * 15) * INCH - SIXTEENTH;
    expect(sum).toBeCloseTo(29.5 * INCH, 9);
  });

  test('the V of the bearer follows each half by itself', () => {
    const [was, now] = [endsOf(nominal, 'frame-a/bearer'), endsOf(left, 'frame-a/bearer')];
    expect(now.left - was.left).toBeCloseTo(SIXTEENTH, 9);
    expect(now.right - was.right).toBeCloseTo(0, 9);
    // The ridge moves towards the thicker half: 1/16 over the sum of the two slopes, 2 x 0.05625.
    const ridge = (job: Job): number => {
      const { assembly } = job;
      const body = partOf(assembly, 'frame-a/bearer').body as PrismBody;
      const floor = body.outline.filter((p) => p.surface === 'relief.wall' || p.surface === 'relief.floor');
      const ys = floor.map((p) => toOuter(placeOf(assembly, 'frame-a/bearer'), [p.x, p.y, 0])[1]);
      return (Math.min(...ys) + Math.max(...ys)) / 2;
    };
    expect(ridge(left) - ridge(nominal)).toBeCloseTo(-(SIXTEENTH / 2 / 0.05625), 6);
  });

  test('screws meet the underside where it is, go as deep into it, and so nearer to the show face', () => {
    for (const n of [1, 2, 3, 4, 5]) {
      const [was, now] = [pilotOf(nominal, n), pilotOf(thin, n)];
      expect(was.mouth - now.mouth).toBeCloseTo(SIXTEENTH, 9);
      expect(now.depth).toBeCloseTo(was.depth, 9);
    }
    const lost = [1, 2, 4, 5].map((n) => pilotOf(nominal, n).mouth - pilotOf(left, n).mouth);
    expect(lost.map((mm) => Math.round((mm / SIXTEENTH) * 1e6)).toSorted((a, b) => a - b)).toEqual([0, 0, 1e6, 1e6]);
    const screws = (job: Job): number[] => job.findings.filter((f) => f.check === 'screw cover').map((f) => f.value!);
    expect(Math.min(...screws(thin))).toBeCloseTo(Math.min(...screws(nominal)) - SIXTEENTH, 6);
  });

  test('slots lose their cover where the wood is thinner', () => {
    const strips = nominal.assembly.parts.filter((p) => p.kind === 'strip').map((p) => p.id);
    const lost = strips.map((id) => Math.round(((coverOf(nominal, id) - coverOf(left, id)) / SIXTEENTH) * 1000) / 1000);
    // Four strips a half; those of the other half keep theirs, but for the one whose slots reach over the ridge.
    expect(lost.filter((n) => n === 1)).toHaveLength(4);
    expect(lost.filter((n) => n === 0).length).toBeGreaterThanOrEqual(3);
  });
});
