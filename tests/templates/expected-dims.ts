import type { PocketInFile, Vec, WrittenTemplate } from './cases.ts';
import { inTable, type LaidSheet, lay } from './laid.ts';

/** Values that dimensions of a template should have, each once, ascending, mm. */
export interface ExpectedDims {
  readonly across: readonly number[];
  readonly up: readonly number[];
}

const along = (p: Vec, d: Vec, by: number): Vec => [p[0] + d[0] * by, p[1] + d[1] * by, p[2] + d[2] * by];

const UPRIGHT = 0.5;

/** Ends of a mortise, middle of a hole or slot, in both directions of the sheet, straight from model.json. */
function places(pocket: PocketInFile, { frame }: WrittenTemplate, sheet: LaidSheet) {
  const seen = (p: Vec): readonly [number, number] => sheet.onSheet(inTable(frame, p));
  const [here, ahead] = [seen(pocket.at), seen(along(pocket.at, pocket.into, 1))];
  const square = Math.abs(pocket.into[2]) > UPRIGHT;
  const upwards = Math.abs(ahead[1] - here[1]) > UPRIGHT;
  const ends = ((): readonly (readonly [number, number])[] => {
    if (pocket.kind !== 'mortise') return [here];
    const { along: a, length, width, into } = pocket as Required<PocketInFile>;
    const b: Vec = [into[1] * a[2] - into[2] * a[1], into[2] * a[0] - into[0] * a[2], into[0] * a[1] - into[1] * a[0]];
    return [-1, 1].flatMap((i) =>
      [-1, 1].map((j) => seen(along(along(pocket.at, a, (i * length) / 2), b, (j * width) / 2))),
    );
  })();
  const both = (axis: 0 | 1): number[] => {
    const values = ends.map((p) => p[axis]);
    return [Math.min(...values), Math.max(...values)];
  };
  return { across: square || upwards ? both(0) : [], up: square || !upwards ? both(1) : [] };
}

/** Each value once, but for zero, ascending; values within 1e-4 are one, since model.json has six decimals. */
export function distinct(values: readonly number[]): number[] {
  const sorted = values.filter((v) => v > 1e-4).sort((a, b) => a - b);
  return sorted.filter((v, i) => i === 0 || v - sorted[i - 1]! > 1e-4);
}

/** What the linear dimensions of a template must say: width, heights of the scribed edge, pockets. */
export function expectedDims(template: WrittenTemplate, sharpCorners: readonly number[]): ExpectedDims {
  const sheet = lay(template.frame, template.outline);
  const points = template.outline.map((p) => sheet.onSheet(inTable(template.frame, [p.x, p.y, 0])));
  const width = Math.max(...points.map((p) => p[0]));
  const side = (x: number): number => Math.max(...points.filter((p) => Math.abs(p[0] - x) < 1e-4).map((p) => p[1]));
  const pockets = template.pockets.map((pocket) => places(pocket, template, sheet));
  return {
    across: distinct([width, ...pockets.flatMap((p) => p.across)]),
    up: distinct([side(0), side(width), ...sharpCorners, ...pockets.flatMap((p) => p.up)]),
  };
}
