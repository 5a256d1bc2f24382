import type { Check } from '../../derive/checks/check.ts';
import { CHECKS } from '../../derive/checks/checks.ts';

/**
 * Checks that look at solids pair by pair or solve for forces: tens of milliseconds each, measured (Node 20, two busy
 * cores). All others together take 2 to 3 ms, and are made in the frame of the change.
 */
const COSTLY: ReadonlySet<string> = new Set([
  'pieces fit together',
  'cuts in stock',
  'tenon fit',
  'screws and slots',
  'give',
  'pull across the grain',
  'sway',
  'joint strength',
  'shop limits',
]);

export const isQuick = ({ name }: Check): boolean => !COSTLY.has(name);

export const QUICK_CHECKS: readonly Check[] = CHECKS.filter(isQuick);

export const COSTLY_CHECKS: readonly Check[] = CHECKS.filter((check) => !isQuick(check));
