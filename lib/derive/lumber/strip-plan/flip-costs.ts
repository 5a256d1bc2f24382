import { placesOf, type Sliding } from './sliding.ts';
import type { StripModel } from './strip-model.ts';
import { showLayer, undersideFloor } from './underside-floor.ts';

/** What each side of a show board costs at least over its better side, with its underside wherever the strip comes to lie. */
export function sideCosts(model: StripModel, i: number, strip: Sliding): readonly [up: number, down: number] {
  const [up, down] = [model.showCost[2 * i]!, model.showCost[2 * i + 1]!];
  const least = Math.min(up, down);
  if (model.boards[i]!.defects.length === 0) return [up - least, down - least];
  const places = placesOf(model, strip, model.width[i]!);
  return [
    up - least + undersideFloor(model, showLayer(model, i, 0), places),
    down - least + undersideFloor(model, showLayer(model, i, 1), places),
  ];
}

/**
 * What the flips of a row of show boards cost at least, each over its better side: a programme over two states, from the left.
 * Room for two numbers a strip.
 */
export class FlipCosts {
  private readonly model: StripModel;
  /** Least cost of the strips up to each one, by the flip of that one. */
  private readonly upTo: Float64Array;

  constructor(model: StripModel) {
    this.model = model;
    this.upTo = new Float64Array(2 * model.strips + 2);
  }

  /** Lays board i into strip j, after all strips before; its two sides cost so much. Answers the least so far. */
  lay(j: number, up: number, down: number): number {
    const { upTo } = this;
    const alike = j === 0 ? 0 : this.model.prices.of.rings;
    const [f, g] = [upTo[2 * j]!, upTo[2 * j + 1]!];
    upTo[2 * j + 2] = Math.min(g, f + alike) + up;
    upTo[2 * j + 3] = Math.min(f, g + alike) + down;
    return this.least(j + 1);
  }

  /** Least cost of the strips before j. */
  least(j: number): number {
    return Math.min(this.upTo[2 * j]!, this.upTo[2 * j + 1]!);
  }

  /** Least cost of all strips, those before j being laid, the others as they cost from the right. */
  with(rest: Float64Array, j: number): number {
    const { upTo, model } = this;
    const [a, b] = [rest[2 * j]!, rest[2 * j + 1]!];
    const alike = j === 0 ? 0 : model.prices.of.rings;
    return Math.min(upTo[2 * j]! + Math.min(b, a + alike), upTo[2 * j + 1]! + Math.min(a, b + alike));
  }
}
