/**
 * What no propeller outdoes, by momentum theory (H. Glauert, The Elements of Aerofoil and Airscrew Theory), from thrust coefficient C_T ≥ 0 and
 * advance ratio J: C_P ≥ C_T (J/2 + √(J²/4 + 2 C_T/π)), and so the efficiency J C_T/C_P ≤ 2/(1 + √(1 + 8 C_T/(π J²))).
 */
export const leastPower = (thrust: number, advance: number): number =>
  thrust * (advance / 2 + Math.sqrt((advance * advance) / 4 + (2 * thrust) / Math.PI));
export const idealEfficiency = (thrust: number, advance: number): number =>
  2 / (1 + Math.sqrt(1 + (8 * thrust) / (Math.PI * advance * advance)));
