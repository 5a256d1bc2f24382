import { placeOf } from '../../model/assembly.ts';
import type { Part, PartId } from '../../model/part.ts';
import { apart } from '../drawings/apart.ts';
import { pullsOf } from '../drawings/pulls.ts';
import { placedBounds } from '../solids/placed-bounds.ts';
import { boundsOf } from '../solids/solid.ts';
import { sceneBoards } from './scene-boards.ts';
import type { SceneData, ScenePart, SceneShape } from './scene-data.ts';
import type { SceneInput } from './scene-input.ts';
import { groupOf, sceneParts } from './scene-parts.ts';
import { sceneSeats } from './scene-seats.ts';
import { keyedShape } from './scene-shape.ts';
import { sceneWords } from './scene-words.ts';
import { woodLook } from './wood-look.ts';

/** What a preview shows of a piece. A few milliseconds: a page may ask for it at every change. */
export function sceneOf(input: SceneInput): SceneData {
  const { assembly, units, site } = input;
  const shown = sceneParts(assembly);
  const { shapes, keys } = meshesOf(input, shown);
  const boxes = new Map(
    shown.map((part) => [part.id, placedBounds(placeOf(assembly, part.id), input.shapes.get(part.id)!.solid.vertices)]),
  );
  const solid = shown.filter((part) => part.kind !== 'looseTenon').map((part) => part.id);
  const moved = apart(solid, pullsOf(assembly, boxes));
  const bounds = boundsOf([...boxes.values()].flatMap(({ min, max }) => [min, max]));
  const [length, width, height] = [0, 1, 2].map((k) => bounds.max[k as 0] - bounds.min[k as 0]);
  const overall = { length: length!, width: width!, height: height! };
  const seats = sceneSeats(assembly, site);
  return {
    words: sceneWords(input, overall, seats),
    units,
    overall,
    bounds,
    shapes,
    parts: shown.map(
      (part): ScenePart => ({
        id: part.id,
        mark: part.mark,
        name: part.name,
        kind: part.kind,
        group: groupOf(part),
        wood: part.wood,
        shape: keys.get(part.id)!,
        frame: placeOf(assembly, part.id),
        boards: sceneBoards(assembly, part),
        apart: moved.get(part.id)!,
      }),
    ),
    woods: new Map(shown.map((part) => [part.wood, woodLook(part.wood)])),
    seats,
  };
}

/** Parts that share a solid share its mesh; so do those whose solids are alike to the last bit. */
function meshesOf(input: SceneInput, parts: readonly Part[]) {
  const shapes = new Map<string, SceneShape>();
  const keys = new Map<PartId, string>();
  for (const part of parts) {
    const { shape, key } = keyedShape(input.shapes.get(part.id)!.solid);
    if (!shapes.has(key)) shapes.set(key, shape);
    keys.set(part.id, key);
  }
  return { shapes, keys };
}
