import type { StripPin, StripProblem, StripSettings } from '../../../lib/derive/lumber/strip-plan/strip-problem.ts';
import { STRIP_ORDER, STRIP_SETTINGS } from '../../../lib/derive/lumber/strip-plan/strip-settings.ts';
import type { Board, Defect } from '../../../lib/model/records.ts';
import { pick, randomFrom } from '../../tables/random.ts';
import { TRIAL_WEIGHTS } from './random-boards.ts';

const LENGTH = 2133.6;

/**
 * Piles that no yard has: thick and thin mixed, all alike, rows much wider than their blank, flat and steep wedges, strips down to
 * nothing, terms in order, pins of every kind.
 */
export function oddProblem(seed: number, strips: readonly number[], most: number): StripProblem {
  const random = randomFrom(seed * 7919);
  const count = pick(random, strips);
  const boards = Math.max(count, Math.floor(count + random() * (most + 1 - count)));
  const centerThickness = pick(random, [57.15, 57.15, 40]);
  const edges = [28.575, 28.575, 10, 50, centerThickness].filter((edge) => edge <= centerThickness);
  const [base, spread] = [pick(random, [122, 122, 60, 200]), pick(random, [55, 0, 150, 20])];
  // Of the strips' width so much is blank: much less than all where ripping goes through outer strips.
  const blank = pick(random, [0.3, 0.5, 0.7]) + 0.4 * random();
  const stock = pick(random, [[27, 33.3, 33.3, 44.45], [30], [60, 30], [27, 70], [62, 50, 40]]);
  const pile: Pile = {
    base,
    spread,
    stock,
    uneven: pick(random, [1.5, 8, 0, 20]),
    less: pick(random, [0, -4, -8, 5, 20]),
  };
  const alike = random() < 0.1 ? oddBoard(random, 0, pile) : undefined;
  return {
    width: (base + spread / 2) * count * blank,
    length: LENGTH,
    centerThickness,
    edgeThickness: pick(random, edges),
    boards: Array.from({ length: boards }, (_, i) => (alike ? { ...alike, ...named(i) } : oddBoard(random, i, pile))),
    settings: { ...STRIP_SETTINGS, ...oddSettings(random, base), strips: count },
    ...(random() < 0.2 ? { pins: [oddPin(random, count)] } : {}),
  };
}

interface Pile {
  readonly base: number;
  readonly spread: number;
  readonly stock: readonly number[];
  readonly uneven: number;
  readonly less: number;
}

const named = (i: number): Pick<Board, 'row' | 'mark'> => ({ row: i + 2, mark: String(i + 1).padStart(2, '0') });

function oddBoard(random: () => number, i: number, { base, spread, stock, uneven, less }: Pile): Board {
  const width = base + spread * random();
  const length = pick(random, [2190 + 300 * random(), LENGTH, 2300]);
  const deep = pick(random, [20, 60]);
  const defects = Array.from({ length: Math.floor(pick(random, [3, 3, 1, 6]) * random()) }, (): Defect => {
    const [from, near] = [random() * (length - 150), random() * (width - 40)];
    const to = from + 30 + pick(random, [120, 900]) * random();
    const far = Math.min(width, near + 10 + pick(random, [50, 200]) * random());
    const face = pick(random, ['A', 'B', 'A', 'B', 'through'] as const);
    return { what: 'knot', from, to, near, far, face, depth: 2 + deep * random() };
  });
  const bark = random() < 0.8 ? { bark: pick(random, ['A', 'B'] as const) } : {};
  const thickness = Math.max(8, pick(random, stock) - 1 + uneven * random() + less);
  return { ...named(i), thickness, width, length, tone: random(), defects, ...bark };
}

function oddSettings(random: () => number, base: number): Partial<StripSettings> {
  const order = [...STRIP_ORDER].sort(() => random() - 0.5);
  const weights = {
    ...TRIAL_WEIGHTS,
    reserve: pick(random, [4, 4, 0, 40]),
    symmetry: pick(random, [0, 0, 0.5]),
    tone: pick(random, [20, 20, 0]),
    volume: pick(random, [0.25, 0]),
    undersideDefects: pick(random, [1, 20, 100]),
  };
  return {
    layers: pick(random, ['either', 'either', 'two', 'one'] as const),
    rings: pick(random, ['alternate', 'ignore'] as const),
    seamOnCenterLine: random() < 0.15,
    leastWidth: pick(random, [10, 30, 50.8, 110, base * 0.9]),
    leastHalf: pick(random, [0, 0, 0, 50.8]),
    jointing: pick(random, [0.79375, 0, 3]),
    cleanUp: pick(random, [1.5875, 0, 5]),
    reserveCap: pick(random, [3, 3, 0, 10]),
    preference:
      random() < 0.25
        ? { mode: 'ordered', order: order.slice(0, 1 + Math.floor(random() * order.length)) }
        : { mode: 'weighted', weights },
  };
}

function oddPin(random: () => number, strips: number): StripPin {
  return {
    mark: '01',
    ...(random() < 0.5 ? { strip: 1 + Math.floor(random() * strips) } : {}),
    ...(random() < 0.4 ? { faceUp: pick(random, ['A', 'B'] as const) } : {}),
    ...(random() < 0.4 ? { turned: random() < 0.5 } : {}),
    ...(random() < 0.3 ? { layer: pick(random, ['show', 'bottom'] as const) } : {}),
  };
}
