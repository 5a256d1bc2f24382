/** Said where the strips have no plan: boards are then free for parts that the strips may want. */
export const NOT_KEPT = 'no board is kept for the strips of the top here, as these have no plan';
