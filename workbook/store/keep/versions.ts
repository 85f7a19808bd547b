import type { Version } from './database';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/** What is changed within this time of the first change is one version. */
const TOGETHER = 10 * MINUTE;
/** Things changed that a version tells by name. */
export const TOLD = 8;
/** Versions without a name that a design keeps at most. */
const MOST = 120;

/** The rule of `thinned`, for those who read the list. */
export const THINNING =
  'A version gathers what is changed within ten minutes. All versions of the last day stay, then one an hour for a week and one a day for three months, at most 120 of a design. A version with a name stays until you remove it.';

export interface Edits {
  readonly at: number;
  readonly says: readonly string[];
  readonly text: string;
  /** Begins a version of its own, whatever the clock says. */
  readonly apart?: boolean;
}

/** The newest version with some edits more, or undefined where those begin a version of their own. */
export function joined(last: Version | undefined, edits: Edits): Version | undefined {
  if (!last || last.name !== undefined || edits.apart) return undefined;
  const since = edits.at - last.began;
  // A clock that was set back begins a version too.
  if (since < 0 || since > TOGETHER) return undefined;
  return {
    ...last,
    at: edits.at,
    text: edits.text,
    edits: last.edits + edits.says.length,
    says: gathered(last.says, edits.says),
  };
}

/** Each thing once, the latest last, and no more than are told. */
export function gathered(before: readonly string[], more: readonly string[]): readonly string[] {
  return [...new Set([...before, ...more].toReversed())].slice(0, TOLD).toReversed();
}

type Dated = Pick<Version, 'id' | 'at' | 'name'>;

/** Ids of the versions of one design that go: see `THINNING`. The newest always stays. */
export function thinned(versions: readonly Dated[], now: number): number[] {
  const unnamed = versions.filter((version) => version.name === undefined).sort((a, b) => b.at - a.at || b.id - a.id);
  const taken = new Set<string>();
  const staying = unnamed.filter(({ at }, k) => {
    const span = spanOf(at, now);
    if (k > 0 && (span === undefined || taken.has(span))) return false;
    if (span) taken.add(span);
    return true;
  });
  const stay = new Set(staying.slice(0, MOST));
  return unnamed.filter((version) => !stay.has(version)).map((version) => version.id);
}

/** The span of time of which one version stays; '' where all do, undefined where none does. */
function spanOf(at: number, now: number): string | undefined {
  const age = now - at;
  if (age <= DAY) return '';
  if (age <= 7 * DAY) return `hour ${Math.floor(at / HOUR)}`;
  if (age <= 90 * DAY) return `day ${Math.floor(at / DAY)}`;
  return undefined;
}
