/** What the pictures of a tank show, by number in its outlines. */
export const TANK_VIEWS = ['plan', 'end', 'rest'] as const;
export type TankView = (typeof TANK_VIEWS)[number];
export const TANK_PARTS = ['tank', 'fuel', 'pickup', 'uncovered', 'vent', 'spray', 'head'] as const;
export type TankPart = (typeof TANK_PARTS)[number];
