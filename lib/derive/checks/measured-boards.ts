import type { SliceBody } from '../../model/body.ts';
import type { Finding } from '../../model/finding.ts';
import type { Part } from '../../model/part.ts';
import type { Board } from '../../model/records.ts';
import { formatNumber } from '../../units/format-length.ts';
import type { Mm } from '../../units/mm.ts';
import { MOST_MOISTURE } from '../lumber/too-wet.ts';
import { type Check, type CheckContext, say } from './check.ts';

/** Pins read too low in dry wood: under this their reading is not to be trusted, percent (reported by mills, one source). */
const PINS_FROM = 7;

/** Lengths and thicknesses that differ by less are the same, mm (our convention). */
const SAME: Mm = 1e-6;

type Strip = Part & { readonly body: SliceBody };

/**
 * The boards as measured: too wet to be milled, too dry for a meter with pins, too thin or too short for any strip of the
 * top. Nothing to say when no boards were measured.
 */
export const measuredBoards: Check = {
  name: 'boards as measured',
  run(context) {
    const { boards, assembly } = context;
    if (!boards) return [];
    const strips = assembly.parts.filter((part): part is Strip => part.body.kind === 'slice');
    const part = (strips[0] ?? assembly.parts[0]!).id;
    const found = [
      wet(boards, part),
      dry(boards, part),
      ...(strips.length > 0 ? [small(context, boards, strips)] : []),
    ];
    return found
      .flatMap((finding) => (finding ? [finding] : []))
      .concat(found.some(Boolean) ? [] : [well(boards, part)]);
  },
};

type Found = Omit<Finding, 'check' | 'part' | 'source'>;

const finding = (part: string, source: string, found: Found): Finding => ({
  check: measuredBoards.name,
  part,
  source,
  ...found,
});

const names = (boards: readonly Board[]): string =>
  `board${boards.length > 1 ? 's' : ''} ${boards.map(({ mark }) => mark).join(', ')}`;

function wet(boards: readonly Board[], part: string): Finding | undefined {
  const own = boards.filter(({ moisture = 0 }) => moisture > MOST_MOISTURE);
  if (own.length === 0) return undefined;
  const value = Math.max(...own.map(({ moisture }) => moisture!));
  return finding(part, 'common practice, no source', {
    verdict: 'look again',
    where: 'moisture',
    value,
    limit: MOST_MOISTURE,
    unit: '%',
    because: `${names(own)}: up to ${formatNumber(value, 1)} % moisture; over ${MOST_MOISTURE} % wood is too wet for a heated room`,
    fixes: ['sticker them indoors and measure the core again, or leave them out'],
  });
}

function dry(boards: readonly Board[], part: string): Finding | undefined {
  const own = boards.filter(({ moisture = PINS_FROM }) => moisture < PINS_FROM);
  if (own.length === 0) return undefined;
  const value = Math.min(...own.map(({ moisture }) => moisture!));
  return finding(part, 'reported by mills, one source: meters with pins are not to be trusted below it', {
    verdict: 'look again',
    where: 'meter',
    value,
    limit: PINS_FROM,
    unit: '%',
    because: `${names(own)}: ${formatNumber(value, 1)} % moisture; under ${PINS_FROM} % a meter with pins is not to be trusted`,
    fixes: ['measure without pins, or weigh and dry a piece of it'],
  });
}

function small(context: CheckContext, boards: readonly Board[], strips: readonly Strip[]): Finding | undefined {
  const thin = Math.min(...strips.map(({ rough }) => rough.thickness));
  const short = Math.min(...strips.map(({ rough }) => rough.length));
  const own = boards.filter((b) => b.thickness < thin - SAME || b.length < short - SAME);
  if (own.length === 0) return undefined;
  const value = Math.min(...own.map(({ length }) => length));
  return finding(strips[0]!.id, 'our convention', {
    verdict: 'ok',
    where: 'size',
    value,
    limit: short,
    unit: 'mm',
    because: `${names(own)}: too short or too thin for any strip of the top, which wants ${say(context, short, 'up')} x ${say(context, thin, 'up')} at least; they may still serve for the base`,
    fixes: [],
  });
}

const well = (boards: readonly Board[], part: string): Finding =>
  finding(part, 'our convention', {
    verdict: 'ok',
    unit: '',
    because: `all ${boards.length} boards are dry enough, and thick and long enough for some strip`,
    fixes: [],
  });
