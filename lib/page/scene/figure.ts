import { BoxGeometry, type BufferGeometry, CapsuleGeometry, Quaternion, SphereGeometry, Vector3 } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import type { Vec3 } from '../../geometry/vec.ts';
import type { Mm } from '../../units/mm.ts';

// Plain shapes for scale: x to the right, y ahead, z up from the floor, mm. Sizes are from memory, our convention: a
// chair of usual size, a person 1.70 m tall.

type Limb = readonly [from: Vec3, to: Vec3, radius: Mm];

const mirrored = (limbs: readonly Limb[]): Limb[] =>
  limbs.flatMap(([from, to, r]): Limb[] => [
    [from, to, r],
    [[-from[0], from[1], from[2]], [-to[0], to[1], to[2]], r],
  ]);

function capsule([from, to, radius]: Limb): BufferGeometry {
  const [a, b] = [new Vector3(...from), new Vector3(...to)];
  const geometry = new CapsuleGeometry(radius, a.distanceTo(b), 6, 14);
  geometry.applyQuaternion(new Quaternion().setFromUnitVectors(new Vector3(0, 1, 0), b.clone().sub(a).normalize()));
  const middle = a.add(b).multiplyScalar(0.5);
  return geometry.translate(middle.x, middle.y, middle.z);
}

const head = ([x, y, z]: Vec3): BufferGeometry =>
  new SphereGeometry(100, 20, 16).scale(0.78, 0.94, 1.13).translate(x, y, z);

export const standing = (): BufferGeometry =>
  mergeGeometries([
    ...mirrored([
      [[88, -15, 36], [98, 130, 32], 36],
      [[88, 0, 70], [86, 6, 470], 47],
      [[86, 6, 470], [80, 0, 850], 66],
      [[200, -4, 1358], [232, -14, 1085], 43],
      [[232, -14, 1085], [224, 56, 850], 35],
      [[224, 62, 820], [222, 74, 775], 33],
    ]).map(capsule),
    ...(
      [
        [[-62, 0, 905], [62, 0, 905], 98],
        [[-38, 0, 950], [-52, 0, 1290], 92],
        [[38, 0, 950], [52, 0, 1290], 92],
        [[-140, -4, 1365], [140, -4, 1365], 58],
        [[0, 0, 1400], [0, 8, 1490], 50],
      ] as const
    ).map(capsule),
    head([0, 18, 1590]),
  ]);

/** y is 0 at the front of the seat. */
export function seated(seat: Mm, table: Mm): BufferGeometry {
  const shoulder = seat + 570;
  return mergeGeometries([
    ...mirrored([
      [[95, 60, 36], [105, 200, 32], 36],
      [[95, 80, 80], [95, 105, seat + 40], 47],
      [[95, 105, seat + 45], [82, -290, seat + 78], 66],
      [[196, -268, shoulder - 10], [245, -150, table + 95], 43],
      [[245, -150, table + 95], [150, 90, table + 48], 35],
      [[140, 110, table + 44], [110, 150, table + 38], 30],
    ]).map(capsule),
    ...(
      [
        [[-62, -305, seat + 98], [62, -305, seat + 98], 98],
        [[-38, -305, seat + 140], [-52, -278, seat + 490], 92],
        [[38, -305, seat + 140], [52, -278, seat + 490], 92],
        [[-140, -272, shoulder], [140, -272, shoulder], 58],
        [[0, -268, shoulder + 35], [0, -248, shoulder + 125], 50],
      ] as const
    ).map(capsule),
    head([0, -232, shoulder + 222]),
  ]);
}

const CHAIR = { width: 440, depth: 430, seat: 26, leg: 32, back: 390 } as const;

/** y is 0 at the front of the seat, which is `seat` mm high. */
export function chair(seat: Mm): BufferGeometry {
  const { width, depth, leg, back } = CHAIR;
  const box = (size: Vec3, at: Vec3): BufferGeometry => new BoxGeometry(...size).translate(...at);
  const side = width / 2 - leg / 2 - 12;
  const slat = (z: Mm, tall: Mm): BufferGeometry => box([2 * side, 18, tall], [0, -depth + leg / 2, seat + z]);
  return mergeGeometries([
    box([width, depth, CHAIR.seat], [0, -depth / 2, seat - CHAIR.seat / 2]),
    ...[-side, side].flatMap((x) => [
      box([leg, leg, seat - CHAIR.seat], [x, -leg, (seat - CHAIR.seat) / 2]),
      box([leg, leg, seat + back], [x, -depth + leg / 2, (seat + back) / 2]),
      box([18, depth - 2 * leg, 40], [x, -depth / 2, seat * 0.45]),
    ]),
    slat(back - 45, 90),
    slat(back - 175, 60),
    slat(back - 280, 60),
  ]);
}

/** mm over all, to frame a view: half width, behind the front of the seat, height over the seat. */
export const CHAIR_BOX = { half: CHAIR.width / 2, behind: CHAIR.depth, above: CHAIR.back } as const;
