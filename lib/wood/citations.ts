/**
 * Citations of the Wood Handbook, USDA Forest Products Laboratory: FPL-GTR-190 (2010), read as page text, and
 * FPL-GTR-282 (2021), read in public copies.
 */
export const TABLE_4_3 = 'FPL-GTR-190 table 4-3';
export const TABLE_4_3_NEW = 'FPL-GTR-282 table 4-3 (public copy)';
/** Imported woods. */
export const TABLE_4_4 = 'FPL-GTR-190 table 4-4';
export const TABLE_5_1 = 'FPL-GTR-282 table 5-1';
export const TABLE_5_1_QUOTED = 'FPL-GTR-282 table 5-1 (quoted in public files)';
export const TABLE_5_2 = 'FPL-GTR-282 table 5-2';
/** Inch-pound printing, converted to SI and rounded to four digits; the metric printing is not always its rounding. */
export const TABLE_5_3B = 'FPL-GTR-282 table 5-3b (public copy)';
/** The same for imported woods. */
export const TABLE_5_5B = 'FPL-GTR-282 table 5-5b (public copy)';
export const TABLE_5_13 = 'FPL-GTR-282 table 5-13 and p. 5-34 (public copy)';
export const TABLE_13_5 = 'FPL-GTR-190 table 13-5';
export const TABLE_13_5_CHART = 'flooring charts that quote FPL-GTR-190 table 13-5';
export const EQ_4_14 = 'FPL-GTR-282 Eq 4-14 from the specific gravity at 12 %';
