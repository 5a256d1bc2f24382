/**
 * Strips in order, as bare widths: `edges[j]` mm from the left edge of the first strip to the left edge of strip j, as wide as
 * the boards allow; `spare[j]` mm of stack over what the center line wants. The whole row may slide sideways under the taper.
 *
 * Strip j spans [a, b] from the center line and has the reserve spare[j] + slope · max(0, a, -b): less where it reaches in.
 */
export interface Row {
  readonly edges: Float64Array;
  readonly spare: Float64Array;
}
