/** One line of a list to pick from. */
export interface PickOption {
  readonly value: string;
  readonly title: string;
  /** Options of one group stand together under its title. */
  readonly group?: string;
  /** What it gives, beside its title: "135 kg/m³". */
  readonly detail?: string;
}

/** Lines that are shown at once: as many as somebody reads before typing is quicker. */
const MOST_SHOWN = 40;

export interface Found {
  readonly shown: readonly PickOption[];
  /** Options that fit and are not shown. */
  readonly more: number;
}

/**
 * The options whose title, group or detail has a word that begins with each word of what is typed, in the order of the list: first those
 * whose title begins with it, then those whose title has it, then those whose title has its words. Groups stay together.
 */
export function findOptions(options: readonly PickOption[], typed: string): Found {
  const words = wordsOf(typed);
  const first = plain(typed);
  const rank = ({ title, group = '', detail = '' }: PickOption): number => {
    if (words.length === 0) return 0;
    if (plain(title).startsWith(first)) return 0;
    if (plain(title).includes(` ${first}`)) return 1;
    return fits(title, words) ? 2 : fits(`${title} ${group} ${detail}`, words) ? 3 : UNFIT;
  };
  const ranked = options.map((option) => ({ option, rank: rank(option) })).filter((each) => each.rank < UNFIT);
  const all = together(ranked.toSorted((a, b) => a.rank - b.rank).map(({ option }) => option));
  return { shown: all.slice(0, MOST_SHOWN), more: Math.max(0, all.length - MOST_SHOWN) };
}

const UNFIT = 4;

/** Whatever its accents and capitals. */
const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase().trim();
const wordsOf = (text: string): readonly string[] =>
  plain(text)
    .split(/[^\p{L}\p{N}.]+/u)
    .filter(Boolean);

function fits(text: string, words: readonly string[]): boolean {
  const there = wordsOf(text);
  return words.every((word) => there.some((each) => each.startsWith(word)));
}

/** Groups in the order in which they come first, each with all of its options behind it. */
function together(options: readonly PickOption[]): readonly PickOption[] {
  const groups = new Set(options.map(({ group }) => group));
  return [...groups].flatMap((group) => options.filter((option) => option.group === group));
}
