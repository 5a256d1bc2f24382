/** Acceleration of gravity, m/s², as used for every weight here. */
export const GRAVITY = 9.81;

/** Weight in N of a mass in kg. */
export const weightOf = (mass: number): number => mass * GRAVITY;

/** Mass in kg of wood, from mm³ and kg/m³. */
export const massOf = (volume: number, density: number): number => volume * density * 1e-9;
