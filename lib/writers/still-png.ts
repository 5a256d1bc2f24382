import type { Picture } from '../derive/drawings/picture.ts';
import type { SceneData } from '../derive/scene/scene-data.ts';
import type { Vec2 } from '../geometry/vec.ts';
import { type Canvas, canvas } from './still/canvas.ts';
import { png } from './still/png.ts';
import { woodTones } from './still/wood-tones.ts';
import { stillScale } from './still-svg.ts';

/** Pixels across, and how many times finer it is painted in each direction before it is made smaller. */
const WIDTH = 1200;
const FINER = 3;

/** The same picture as pixels on white, with smooth edges. Text of the file: title and what must not be overlooked. */
export function stillPng(picture: Picture, data: SceneData, text: Readonly<Record<string, string>>): Uint8Array {
  const { at, tall } = stillScale(picture, WIDTH * FINER);
  const height = Math.ceil(tall / FINER);
  const paint = canvas(WIDTH * FINER, height * FINER);
  for (const hull of picture.shadow) paint.fill([hull.map(at)], [232, 230, 227]);
  const tones = woodTones(data);
  for (const { part, loops, tone } of picture.fills)
    paint.fill(
      loops.map((loop) => loop.map(at)),
      tones(part, tone),
    );
  for (const outline of [false, true]) {
    for (const line of picture.lines) {
      if (line.outline === outline) stroke(paint, at(line.from), at(line.to), outline);
    }
  }
  return png(WIDTH, height, paint.smaller(FINER), text);
}

function stroke(paint: Canvas, a: Vec2, b: Vec2, outline: boolean): void {
  const half = (outline ? 0.65 : 0.4) * FINER;
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const size = Math.hypot(dx, dy);
  if (size === 0) return;
  const [ux, uy] = [(dx / size) * half, (dy / size) * half];
  const corners: Vec2[] = [
    [a[0] - ux - uy, a[1] - uy + ux],
    [b[0] + ux - uy, b[1] + uy + ux],
    [b[0] + ux + uy, b[1] + uy - ux],
    [a[0] - ux + uy, a[1] - uy - ux],
  ];
  paint.fill([corners], outline ? [62, 46, 34] : [104, 80, 60]);
}
