/**
 * Stress in wood that is held across its grain while its moisture would change its width, MPa: E_T C ΔMC. Elastic;
 * creep takes part of it away in time.
 *
 * @param across E across the grain, MPa.
 * @param perPercent change per length and percent of moisture.
 * @param moistureChange percent; the sign does not matter.
 */
export const restraintStress = (across: number, perPercent: number, moistureChange: number): number =>
  across * perPercent * Math.abs(moistureChange);
