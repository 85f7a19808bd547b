/** Designs that come with the program, of one invented club: a racer with every study on it, a trainer and a stunt model. */
const shipped = {
  quern: () => import('../../data/designs/quern-25.tetherwright.json?raw'),
  hob: () => import('../../data/designs/hob.tetherwright.json?raw'),
  trivet: () => import('../../data/designs/trivet-46.tetherwright.json?raw'),
};
export type ShippedDesign = keyof typeof shipped;

/** The text of one of them, the racer if not said, fetched when it is asked for. */
export const loadDemo = async (design: ShippedDesign = 'quern'): Promise<string> => (await shipped[design]()).default;
