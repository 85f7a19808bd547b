import type { Document } from '../../sheet/document';
import { editLive, type Live } from '../../sheet/live';
import { putText } from '../../sheet/paths';
import type { Library } from '../../sheet/specs';
import { type Figures, figuresOf, typedValue, withNumber } from '../field/numbers';
import type { DayForm, WholeDay } from './told';

const DEGREES = Math.PI / 180;

/** The form with what the design says wherever the day does not. */
export function wholeDay(form: DayForm, live: Live, figures: Figures): WholeDay {
  const of = (role: string): number => typedValue(live, figures.path(role)!);
  const wind = form.wind ?? of('air.wind');
  return {
    ...form,
    temperature: form.temperature ?? of('air.temperature'),
    elevation: form.elevation ?? of('air.elevation'),
    wind,
    gusts: Math.max(wind, form.gusts ?? wind * of('air.gust')),
    from: form.from ?? of('air.wind_from'),
    pit: form.pit ?? of('glide.pit'),
    ground: form.ground ?? 'short_grass',
  };
}

/** The design on that day: the air, the wind and the pit as they are there, the rest as it stands. */
export function onDay(live: Live, day: WholeDay, library: Library): Live {
  const figures = figuresOf(live, library);
  const { document } = live.compiled;
  const set = (now: Document, of: string, si: number): Document => withNumber(live, now, figures.path(of)!, si);
  const blank = (now: Document, of: string): Document => putText(now, figures.path(of)!, '') ?? now;
  const gust = day.wind > 0 ? Math.min(3, day.gusts / day.wind) : 1;
  const air = [
    ['air.temperature', day.temperature],
    ['air.elevation', day.elevation],
    ['air.wind', day.wind],
    ['air.gust', gust],
    ['air.wind_from', day.from % (360 * DEGREES)],
    ['glide.pit', day.pit % (360 * DEGREES)],
  ] as const;
  const typed = air.reduce((now, [of, si]) => set(now, of, si), blank(blank(document, 'air.density'), 'air.pressure'));
  const whole = day.pressure === undefined ? typed : set(typed, 'air.pressure', day.pressure);
  return editLive(live, whole, library).live;
}
