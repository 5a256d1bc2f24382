import type { UnitSystem } from '../units/format-length.ts';
import type { Complaint } from './apply-rules.ts';
import { rangeOf } from './must-be.ts';
import type { Spec } from './spec.ts';

/** Reasons that are told; the rest is counted. */
const MOST = 2;

/** Why the rules refuse values, in one line: `top.edgeThickness must be at most 2 1/4 in: the upper limit is top.thickness`. */
export function refusalText(spec: Spec, complaints: readonly Complaint[], units: UnitSystem): string {
  const texts = [...new Set(complaints.map((complaint) => textOf(spec, complaint, units)))];
  const rest = texts.length - MOST;
  return [...texts.slice(0, MOST), ...(rest > 0 ? [`and ${rest} more`] : [])].join('; ');
}

function textOf(spec: Spec, { path, min, max, because }: Complaint, units: UnitSystem): string {
  const param = spec.table.get(path)!;
  const unit = param.kind === 'length' ? units : param.kind === 'quantity' ? param.unit : '';
  const range = rangeOf({ min, max, unit }, units);
  return `${path} ${range ? `must be ${range}` : 'does not go with the rest'}: ${because}`;
}
