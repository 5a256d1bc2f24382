import {
  BufferAttribute,
  BufferGeometry,
  LineBasicMaterial,
  LineSegments,
  type PerspectiveCamera,
  Vector3,
} from 'three';
import type { SceneData } from '../../derive/scene/scene-data.ts';
import type { Vec3 } from '../../geometry/vec.ts';
import { formatInches, formatMm, type UnitSystem } from '../../units/format-length.ts';
import type { Box } from './box.ts';

/** The sizes over all, drawn beside the piece; figures are text of the page, so that they can be read and are sharp. */
export interface Dimensions {
  readonly lines: LineSegments;
  /** Holds the figures, over the picture. */
  readonly labels: HTMLElement;
  update(data: SceneData, units: UnitSystem): void;
  show(on: boolean): void;
  /** Puts the figures where their lines are in a picture of this size. */
  settle(camera: PerspectiveCamera, width: number, height: number): void;
  box(): Box;
  dispose(): void;
}

/** mm from the piece to a dimension line, as a share of its largest size, and from there to the end of the tick. */
const AWAY = 0.055;
const TICK = 0.01;

/** A line that looks shorter than this has no figure, pixels: it is seen end-on. */
const SHORT = 28;

interface Measure {
  readonly name: 'length' | 'width' | 'height';
  readonly from: Vec3;
  readonly to: Vec3;
  readonly label: HTMLElement;
}

/** As a customer reads it. */
export const saySize = (mm: number, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { denominator: 16 }) : formatMm(mm, 0);

export function makeDimensions(): Dimensions {
  const material = new LineBasicMaterial({ color: '#3a332b' });
  const lines = new LineSegments(new BufferGeometry(), material);
  const labels = document.createElement('div');
  labels.className = 'scene-labels';
  const measures = (['length', 'width', 'height'] as const).map((name) => {
    const label = document.createElement('span');
    label.className = 'scene-label';
    labels.append(label);
    return { name, label };
  });
  let current: readonly Measure[] = [];
  let box: Box = { min: [0, 0, 0], max: [0, 0, 0] };
  const show = (on: boolean): void => {
    lines.visible = on;
    labels.hidden = !on;
  };
  show(false);
  return {
    lines,
    labels,
    update({ bounds, overall }, units) {
      const ends = endsOf(bounds);
      current = measures.map(({ name, label }) => ({ name, label, ...ends[name] }));
      for (const { name, label } of current) label.textContent = `${saySize(overall[name], units)}`;
      const { points } = ends;
      lines.geometry.dispose();
      lines.geometry = new BufferGeometry();
      lines.geometry.setAttribute('position', new BufferAttribute(Float32Array.from(points.flat()), 3));
      box = { min: ends.length.from, max: ends.height.to };
      box = {
        min: [bounds.min[0], ends.length.from[1], bounds.min[2]],
        max: [ends.width.from[0], bounds.max[1], bounds.max[2]],
      };
    },
    show,
    settle(camera, width, height) {
      const at = (p: Vec3): Vector3 => {
        const v = new Vector3(...p).project(camera);
        return v.set(((v.x + 1) / 2) * width, ((1 - v.y) / 2) * height, v.z);
      };
      for (const { from, to, label } of current) {
        const [a, b] = [at(from), at(to)];
        const seen = Math.hypot(a.x - b.x, a.y - b.y) > SHORT && Math.max(a.z, b.z) < 1;
        label.hidden = !seen;
        label.style.transform = `translate(${((a.x + b.x) / 2).toFixed(1)}px, ${((a.y + b.y) / 2).toFixed(1)}px) translate(-50%, -50%)`;
      }
    },
    box: () => box,
    dispose() {
      lines.geometry.dispose();
      material.dispose();
      labels.remove();
    },
  };
}

/** Ends of the three dimension lines, and all points of the drawing: in front of the top, beyond its far end. */
function endsOf({ min, max }: Box) {
  const size = Math.max(max[0] - min[0], max[1] - min[1], max[2] - min[2]);
  const [away, tick] = [AWAY * size, TICK * size];
  const [x0, y0, z0] = min;
  const [x1, y1, z1] = max;
  const length = { from: [x0, y0 - away, z1] as Vec3, to: [x1, y0 - away, z1] as Vec3 };
  const width = { from: [x1 + away, y0, z1] as Vec3, to: [x1 + away, y1, z1] as Vec3 };
  const height = { from: [x1 + away, y0 - away, z0] as Vec3, to: [x1 + away, y0 - away, z1] as Vec3 };
  const slash = ([x, y, z]: Vec3, [dx, dy, dz]: Vec3): Vec3[] => [
    [x - dx, y - dy, z - dz],
    [x + dx, y + dy, z + dz],
  ];
  const points: Vec3[] = [
    ...[length, width, height].flatMap(({ from, to }) => [from, to]),
    // From the piece out to the lines, beginning a little off it.
    ...[x0, x1].flatMap((x): Vec3[] => [
      [x, y0 - 0.15 * away, z1],
      [x, y0 - away - tick, z1],
    ]),
    ...[y0, y1].flatMap((y): Vec3[] => [
      [x1 + 0.15 * away, y, z1],
      [x1 + away + tick, y, z1],
    ]),
    ...[length.from, length.to].flatMap((p) => slash(p, [tick, tick, 0])),
    ...[width.from, width.to].flatMap((p) => slash(p, [tick, tick, 0])),
    ...[height.from, height.to].flatMap((p) => slash(p, [tick * 0.7, tick * 0.7, tick])),
  ];
  return { length, width, height, points };
}
