import type { Bill } from '../derive/cut-list/bill.ts';
import { formatInches, formatLength, formatMm, formatNumber, type UnitSystem } from '../units/format-length.ts';
import type { Mm } from '../units/mm.ts';
import { speciesById } from '../wood/species-list.ts';
import type { Table } from './cut-list-table.ts';

/** mL in a US fluid ounce and in a US quart: NIST Handbook 44, appendix C. */
const ML_PER_FLUID_OUNCE = 29.5735;
const ML_PER_QUART = 946.353;

const COLUMNS = [
  { head: 'item' },
  { head: 'quantity', align: 'right' },
  { head: 'unit' },
  { head: 'details' },
] as const;

/** Everything to buy or to lay ready, one line each. Amounts are rounded up. */
export function billTable(bill: Bill, units: UnitSystem): Table {
  return { columns: COLUMNS, rows: [...lumber(bill), ...hardware(bill, units), ...liquids(bill, units)] };
}

function lumber(bill: Bill): string[][] {
  return [
    ...bill.lumber.map((need) => [
      `${speciesById(need.wood).name} ${need.lumber}`,
      up(need.boardFeetRough, 1),
      'bd ft',
      `${need.pieces} pieces, by rough sizes; ${up(need.boardFeet, 1)} by finished sizes; waste not counted`,
    ]),
    ...bill.tooThick.map((name) => [name, '', '', 'no lumber is thick enough; glue up from two layers']),
  ];
}

function hardware(bill: Bill, units: UnitSystem): string[][] {
  const say = (mm: Mm): string => formatLength(mm, units);
  return [
    ...bill.tenons.map((t) => [
      'loose tenons',
      `${t.quantity}`,
      'pieces',
      `${say(t.thickness)} x ${say(t.width)} x ${say(t.length)}, ${speciesById(t.wood).name}; ${stripText(t.strip, units)} of milled strip`,
    ]),
    ...bill.screws.map((s) => [
      'wood screws',
      `${s.quantity}`,
      'pieces',
      `no. ${s.gauge} x ${say(s.length)}, flat under the head`,
    ]),
    ...bill.washers.map((w) => [
      'washers',
      `${w.quantity}`,
      'pieces',
      `${say(w.diameter)} across, one under each screw head`,
    ]),
    ...bill.pads.map((p) => [
      'pads',
      `${p.quantity}`,
      'pieces',
      `${say(p.thickness)} x ${say(p.width)} x ${say(p.length)}`,
    ]),
  ];
}

const stripText = (mm: Mm, units: UnitSystem): string =>
  units === 'in' ? formatInches(mm, { denominator: 1, rounding: 'up' }) : formatMm(mm, 0, 'up');

function liquids(bill: Bill, units: UnitSystem): string[][] {
  const { glue, finish } = bill;
  const area = (mm2: number): string =>
    units === 'in' ? `${formatNumber(mm2 / 304.8 ** 2, 1)} ft2` : `${formatNumber(mm2 / 1e6, 2)} m2`;
  const rows: string[][] = [];
  if (glue.area > 0) {
    const amount = units === 'in' ? glue.milliliters / ML_PER_FLUID_OUNCE : glue.milliliters;
    rows.push([
      'wood glue',
      up(amount, 1),
      units === 'in' ? 'fl oz' : 'mL',
      `${area(glue.area)} of joints, one face spread`,
    ]);
  }
  if (finish.coats > 0) {
    const amount = units === 'in' ? (finish.liters * 1000) / ML_PER_QUART : finish.liters;
    rows.push([
      'finish',
      up(amount, 2),
      units === 'in' ? 'qt' : 'L',
      `${finish.coats} coats on ${area(finish.area)}, every face and the underside; spare counted`,
    ]);
  }
  return rows;
}

function up(value: number, decimals: number): string {
  const k = 10 ** decimals;
  return formatNumber(Math.ceil(value * k - 1e-9) / k, decimals);
}
