import { type DayForm, GROUNDS, type Ground } from '../../engine/index';

const KEY = 'tetherwright.day';

/** What was said of the day on this machine; an older day begins anew with its place and what is on hand. */
export function keptDay(day: string): DayForm {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null');
    const form = typeof kept === 'object' && kept !== null ? readDay(kept as Record<string, unknown>) : {};
    const { elevation, pit, ground, tips, guides } = form;
    const stays = { elevation, pit, ground, tips, guides };
    const said =
      form.day === day
        ? form
        : (Object.fromEntries(Object.entries(stays).filter(([, each]) => each !== undefined)) as Partial<DayForm>);
    return { ...said, day };
  } catch {
    return { day };
  }
}

export function keepDay(form: DayForm): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(form));
  } catch {
    // The card goes on without being remembered.
  }
}

const NUMBERS = ['temperature', 'pressure', 'elevation', 'wind', 'gusts', 'from', 'pit'] as const;
const LISTS = ['tips', 'guides'] as const;
const isNumber = (each: unknown): each is number => typeof each === 'number' && Number.isFinite(each);

function readDay(kept: Record<string, unknown>): Partial<DayForm> {
  const numbers = NUMBERS.flatMap((name) => (isNumber(kept[name]) ? [[name, kept[name]]] : []));
  const lists = LISTS.flatMap((name) => {
    const list = kept[name];
    return Array.isArray(list) && list.every(isNumber) ? [[name, list]] : [];
  });
  const ground = GROUNDS.includes(kept.ground as Ground) ? { ground: kept.ground as Ground } : {};
  const day = typeof kept.day === 'string' ? { day: kept.day } : {};
  return { ...Object.fromEntries([...numbers, ...lists]), ...ground, ...day };
}
