import type { Rgb, SceneData } from '../../derive/scene/scene-data.ts';
import type { PartId } from '../../model/part.ts';

/** The color of a part at a tone from 0 (in the shade) to 1 (in the light): its wood, a little its own. */
export function woodTones(data: SceneData): (part: PartId, tone: number) => Rgb {
  const colors = new Map(
    data.parts.map(({ id, wood, boards }): [PartId, Rgb] => {
      const { early, late } = data.woods.get(wood)!;
      const own = 1 + 0.07 * boards[0]!.tone;
      return [id, early.map((c, k) => (0.6 * c + 0.4 * late[k]!) * own) as unknown as Rgb];
    }),
  );
  return (part, tone) => {
    const light = 0.56 + 0.6 * tone;
    return colors.get(part)!.map((c) => Math.max(0, Math.min(255, c * light))) as unknown as Rgb;
  };
}
