import type { Mm } from '../../../../units/mm.ts';
import { type Figure, ours } from '../ours.ts';

/** How far a top may give under one short load anywhere: up to the first well, up to the second worth another look. */
export const GIVE_LIMITS: Figure<{ readonly ok: Mm; readonly most: Mm }> = ours(
  { ok: 6, most: 10 },
  'our convention; no published value found',
);
