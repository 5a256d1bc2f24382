import { describe, expect, it } from 'vitest';
import { meshBounds, meshVolume, readStl } from './readers/stl.ts';
import { type Changes, type DesignName, type Written, written } from './written.ts';

// Volumes that profiles take off a top, in closed form. A layer at depth u below a face is the plan drawn in by i(u) on all
// sides, so a profile takes P·∫i du - 4·∫i² du off a plan of perimeter P, whether the face is level or follows a taper:
// heights above the taper keep volumes. The pilot holes are eight-sided prisms, 2·√2·r² in section.

const MODEL = ['model', 'stl'];

/** mm³ of the wedge without profiles: half of both thicknesses, times the plan. */
const wedge = (length: number, width: number, thick: number, thin: number): number =>
  (length * width * (thick + thin)) / 2;

/** ∫i du and ∫i² du for a chamfer of 45 degrees: i = c - u. */
const chamfer = (c: number): readonly [number, number] => [c ** 2 / 2, c ** 3 / 3];

/** The same for a quarter round: i = r - √(r² - (r - u)²). */
const round = (r: number): readonly [number, number] => [r ** 2 * (1 - Math.PI / 4), r ** 3 * (5 / 3 - Math.PI / 2)];

/** The same for the chords of a quarter round in four facets, from the corners of the facets. */
function facets(r: number): readonly [number, number] {
  const corner = (k: number): readonly [number, number] => {
    const turn = (k * Math.PI) / 8;
    return [r * (1 - Math.sin(turn)), r * (1 - Math.cos(turn))];
  };
  let [first, second] = [0, 0];
  for (let k = 0; k < 4; k++) {
    const [[i, u], [j, v]] = [corner(k), corner(k + 1)];
    first += ((i + j) / 2) * (v - u);
    second += ((i * i + i * j + j * j) / 3) * (v - u);
  }
  return [first, second];
}

const taken = (length: number, width: number, [first, second]: readonly [number, number]): number =>
  2 * (length + width) * first - 4 * second;

function volumes(build: Written): { readonly exact: number; readonly file: number; readonly pilots: number } {
  const model = build.json('model.json');
  const { features } = model.assembly.parts.find((part: { id: string }) => part.id === 'top');
  const pilots = features
    .filter((f: { kind: string }) => f.kind === 'bore')
    .map((f: { diameter: number; depth: number }) => 2 * Math.SQRT2 * (f.diameter / 2) ** 2 * f.depth)
    .reduce((sum: number, mm3: number) => sum + mm3, 0);
  return {
    exact: model.derived.glueUps.top.volume,
    file: meshVolume(readStl(build.bytes('solids/t-top-mm.stl'))),
    pilots,
  };
}

const build = (name: DesignName, changes: Changes = {}): Promise<Written> => written(name, changes, MODEL);

/** mm³: the two pilot holes on the ridge begin a little above its flanks. */
const RIDGE = 0.5;

/** Corners of an STL file lie on a grid of 0.01 mm, which moves its volume by less than this. */
const FILE = 1e-4;

describe('a top with worked edges', () => {
  it('loses to square edges nothing at all', async () => {
    const { exact, file, pilots } = volumes(
      await build('reading-table', { 'top.showEdge': 'square', 'top.undersideEdge': 'square' }),
    );
    const whole = wedge(2133.6, 1016, 57.15, 28.575);
    expect(whole).toBeCloseTo(5670 * 25.4 ** 3, 3);
    expect(Math.abs(exact + pilots - whole)).toBeLessThan(RIDGE);
    expect(Math.abs(file / exact - 1)).toBeLessThan(FILE);
  });

  it('loses to chamfers what the closed form says, to a cubic millimetre', async () => {
    const { exact, file, pilots } = volumes(await build('meeting-table'));
    const whole = wedge(2400, 960, 50, 28);
    const off = taken(2400, 960, chamfer(3)) + taken(2400, 960, chamfer(8));
    expect(off).toBeGreaterThan(200_000);
    expect(Math.abs(exact + pilots - (whole - off))).toBeLessThan(RIDGE);
    expect(Math.abs(file / exact - 1)).toBeLessThan(FILE);
  });

  it('loses to round-overs what the closed form says: exactly for its facets, within a tenth for true rounds', async () => {
    const { exact, file, pilots } = volumes(await build('reading-table'));
    const whole = wedge(2133.6, 1016, 57.15, 28.575);
    const by = (shape: (r: number) => readonly [number, number]): number =>
      taken(2133.6, 1016, shape(3.175)) + taken(2133.6, 1016, shape(6.35));
    expect(Math.abs(exact + pilots - (whole - by(facets)))).toBeLessThan(RIDGE);
    expect(Math.abs(by(facets) / by(round) - 1)).toBeLessThan(0.1);
    // The facets lie in the wood that a true round would leave.
    expect(by(facets)).toBeGreaterThan(by(round));
    expect(Math.abs(file / exact - 1)).toBeLessThan(FILE);
  });

  it('keeps its size over all', async () => {
    const { min, max } = meshBounds(readStl((await build('reading-table')).bytes('solids/t-top-mm.stl')));
    expect(max[0] - min[0]).toBeCloseTo(2133.6, 1);
    expect(max[1] - min[1]).toBeCloseTo(1016, 1);
    expect(max[2] - min[2]).toBeCloseTo(57.15, 1);
  });
});
