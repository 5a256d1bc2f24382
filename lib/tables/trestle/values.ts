import type { ValuesOf } from '../../params/spec.ts';
import { BASE_FIELDS } from './base-fields.ts';
import { MAKING_FIELDS } from './making-fields.ts';
import { TOP_FIELDS } from './top-fields.ts';

/** Every parameter of a trestle table, in the order of its table. */
export const TRESTLE_FIELDS = { ...TOP_FIELDS, ...BASE_FIELDS, ...MAKING_FIELDS };

export type TrestleFields = typeof TRESTLE_FIELDS;
export type TrestleValues = ValuesOf<TrestleFields>;
