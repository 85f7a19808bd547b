/** What stands on the sheet at one moment, as it is shown: key figures and checks, each with its title. */
export interface Standing {
  readonly figures: readonly Spoken[];
  readonly checks: readonly Spoken[];
}
export interface Spoken {
  readonly path: string;
  readonly title: string;
  readonly words: string;
}

/** Figures that are read aloud after one edit: more would not be waited for. */
const MOST = 4;

/** What an edit has changed, in one breath: checks first, then the key figures in their order; '' where nothing has. */
export function changesSpoken(before: Standing, now: Standing): string {
  const checks = changed(before.checks, now.checks);
  const figures = changed(before.figures, now.figures);
  const said = [...checks, ...figures.slice(0, MOST)].map(({ title, words }) => `${title}: ${words}.`);
  const left = figures.length - MOST;
  if (left > 0) said.push(left === 1 ? '1 more figure changed.' : `${left} more figures changed.`);
  return said.join(' ');
}

/** Only what was there before: a figure that is added is read where it is put. */
function changed(before: readonly Spoken[], now: readonly Spoken[]): readonly Spoken[] {
  const old = new Map(before.map(({ path, words }) => [path, words]));
  return now.filter(({ path, words }) => old.has(path) && old.get(path) !== words);
}
