import { defineParams } from '../../params/define-params.ts';
import { BASE_RULES } from './base-rules.ts';
import { FIXING_RULES } from './fixing-rules.ts';
import { JOINT_RULES } from './joint-rules.ts';
import { MORTISE_RULES } from './mortise-rules.ts';
import { TOP_RULES } from './top-rules.ts';
import { TRESTLE_FIELDS, type TrestleFields } from './values.ts';

/** The parameters of a trestle table, with the rules that keep them fit for each other. */
export const trestleParams = defineParams<TrestleFields>(TRESTLE_FIELDS, [
  ...TOP_RULES,
  ...BASE_RULES,
  ...JOINT_RULES,
  ...MORTISE_RULES,
  ...FIXING_RULES,
]);
