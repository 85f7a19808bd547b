import type { Document } from '../../sheet/document';
import { type Live, numberAt, openQuick, quick, setLive } from '../../sheet/live';
import { fromSI, type UnitSet } from '../../units/index';
import { library } from '../library';
import type { Trim } from './cells';
import { rearmostFor } from './store';

/** Most rounds of setting weights and guide; each brings the design nearer, until one changes nothing. */
const ROUNDS = 14;
/** Wanted nose-out angle: a little, rad. */
const NOSE_OUT = 0.0175;
/** How far the nose turns out for each metre that the guide moves aft, rad: where the search starts, and within what it is believed. */
const TURN = { start: 2, least: 0.4, most: 40 };
/** Longest step of the guide in chords. */
const STEP = 0.06;
/** Stations of the engine in chords, before and behind which weight in nose or tail does the rest (common practice, no source). */
const STATIONS = [-1.4, -0.45] as const;

/** Stations and weights as they are typed: to a millimetre and half a gram, or to a hundredth of an inch and of an ounce. */
export const typedIn: Readonly<
  Record<UnitSet, { station(metres: number): string; weight(kilograms: number): string }>
> = {
  metric: {
    station: (metres) => `${Math.round(metres * 1000)} mm`,
    weight: (kilograms) => `${Math.round(kilograms * 2000) / 2} g`,
  },
  inch_pound: {
    station: (metres) => `${Math.round(fromSI(metres, 'in') * 100) / 100} in`,
    weight: (kilograms) => `${Math.round(fromSI(kilograms, 'oz') * 100) / 100} oz`,
  },
};

/**
 * Sets engine station, tip weight and guide so that the CG lies where ballast wants it, the wings are level and the nose points
 * a little out. Where the engine would have to stand too far ahead, or too near the wing or its tank, weight in nose or tail does the rest.
 */
export function trim(document: Document, chord: number): { readonly live: Live; readonly trim: Trim } {
  let live = openQuick(document, library);
  const { station: stationText, weight: weightText } = typedIn[document.units];
  const none = { nose_weight: weightText(0), tail_weight: weightText(0) };
  const at = (path: string): number => numberAt(live, path);
  const set = (texts: Partial<Trim>): void => {
    live = setLive(live, Object.entries(texts), library, quick(live.compiled.program)).live;
  };
  const kept = (value: number, otherwise: number): number => (Number.isFinite(value) ? value : otherwise);

  let texts: Trim = {
    engine_station: stationText(at('engine_station')),
    tip_weight: weightText(at('tip_weight')),
    nose_weight: weightText(at('nose_weight')),
    tail_weight: weightText(at('tail_weight')),
    guide_x: stationText(at('guide_x')),
  };
  const put = (more: Partial<Trim>): void => {
    texts = { ...texts, ...more };
    set(more);
  };

  let before: { readonly guide: number; readonly nose: number } | undefined;
  let turn = TURN.start;
  for (let round = 0; round < ROUNDS; round++) {
    const last = texts;
    put(none);
    const wanted = at('engine_station') + kept(at('ballast.engine_shift'), 0);
    const rearmost = Math.max(Math.min(STATIONS[1] * chord, rearmostFor(live)), STATIONS[0] * chord);
    const station = Math.min(Math.max(wanted, STATIONS[0] * chord), rearmost);
    put({ engine_station: stationText(station) });
    if (station !== wanted) put(balancingWeights());
    put({ tip_weight: weightText(Math.max(0, at('tip_weight') + kept(at('ballast.tip_weight'), 0))) });
    const now = { guide: at('guide_x'), nose: kept(at('flight.nose_out'), NOSE_OUT) };
    if (before && Math.abs(now.guide - before.guide) > 0.0015) {
      const found = (now.nose - before.nose) / (now.guide - before.guide);
      turn = Math.min(Math.max(found, TURN.least), TURN.most);
    }
    before = now;
    const step = Math.min(Math.max((NOSE_OUT - now.nose) / turn, -STEP * chord), STEP * chord);
    put({ guide_x: stationText(Math.min(Math.max(now.guide + step, 0), chord)) });
    if (Object.entries(last).every(([name, text]) => texts[name as keyof Trim] === text)) break;
  }

  function balancingWeights(): Partial<Trim> {
    return {
      nose_weight: weightText(Math.max(0, kept(at('ballast.nose_weight'), 0))),
      tail_weight: weightText(Math.max(0, kept(at('ballast.tail_weight'), 0))),
    };
  }

  return { live, trim: texts };
}
