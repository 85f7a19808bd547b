/** The text of the design that comes with the program, fetched when it is asked for: an invented racer with every study on it. */
export const loadDemo = async (): Promise<string> =>
  (await import('../../data/designs/quern-25.tetherwright.json?raw')).default;
