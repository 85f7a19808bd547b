import {
  type DayCard,
  type DaySetUp,
  formatNumber,
  formatQuantity,
  type Ground,
  shownUnit,
  type UnitSet,
} from '../../engine/index';

const TURN = 2 * Math.PI;
const POINTS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;

/** "165° S": a bearing with the nearest of eight points. */
export function bearingWords(bearing: number): string {
  if (Number.isNaN(bearing)) return '–';
  const degrees = Math.round((bearing * 360) / TURN) % 360;
  return `${degrees}° ${POINTS[Math.round(degrees / 45) % 8]}`;
}

/** Newtons, pounds and multiples of the weight. */
export function pullWords(pull: number, weight: number): readonly [string, string, string] {
  if (Number.isNaN(pull)) return ['–', '–', '–'];
  return [formatQuantity(pull, 'N'), formatQuantity(pull, 'lbf'), `${formatNumber(pull / weight, 2)} ×`];
}

const lengthWords = (si: number, set: UnitSet): string => formatQuantity(si, shownUnit('mm', set));
const massWords = (si: number, set: UnitSet): string => formatQuantity(si, shownUnit('g', set));
export const windWords = (si: number, set: UnitSet): string =>
  formatQuantity(si, shownUnit('m/s', set), { significant: 2 });

/** "tip 21 g, guide 62 mm, as it is now" */
export function setUpWords({ tip, guide, now, longer }: DaySetUp, set: UnitSet): string {
  const has = [
    ...(Number.isNaN(tip) ? [] : [`tip ${massWords(tip, set)}`]),
    ...(Number.isNaN(guide) ? [] : [`guide ${lengthWords(guide, set)}`]),
  ].join(', ');
  if (now) return has === '' ? 'as it is' : `${has}, as it is`;
  const lap =
    Math.abs(longer) < 0.005 ? 'same lap' : `a lap ${longer > 0 ? '+' : '−'}${Math.abs(longer).toFixed(2)}\u00a0s`;
  return `${has}, ${lap}`;
}

/** Bands of wind, those of one set-up together: "0–8 m/s: tip 21 g, guide 62 mm, as it is". */
export function bandWords({ bands }: Pick<DayCard, 'bands'>, set: UnitSet): readonly string[] {
  const unit = shownUnit('m/s', set);
  const groups: { from: number; to: number; said: string }[] = [];
  for (const { from, to, setUp } of bands) {
    const said = setUp ? (setUp.now ? 'as it is' : setUpWords(setUp, set)) : 'stop';
    const last = groups.at(-1);
    if (last?.said === said) last.to = to;
    else groups.push({ from, to, said });
  }
  const bare = (si: number): string => String(Math.round(Number.parseFloat(formatQuantity(si, unit))));
  return groups.map(({ from, to, said }) => `${bare(from)}–${bare(to)}\u00a0${unit}: ${said}`);
}

export const GROUND_WORDS: Readonly<Record<Ground, string>> = {
  pavement: 'pavement',
  short_grass: 'short grass',
  long_grass: 'long grass',
};

/** Where the wheels are for this ground. */
export function wheelWords({ gear, form }: Pick<DayCard, 'gear' | 'form'>, set: UnitSet): string {
  const ground = GROUND_WORDS[form.ground];
  const { margin, axle, wanted, marginWanted } = gear;
  if (Number.isNaN(margin)) return `Wheels: no answer for ${ground}`;
  const holds = `Wheels, ${ground}: margin ${formatNumber(margin, 2)}`;
  if (margin >= marginWanted) return `${holds}, axle stays at ${lengthWords(axle, set)}`;
  if (Number.isNaN(wanted)) return `${holds}: it noses over`;
  return `${holds}: axle ${lengthWords(axle - wanted, set)} forward, to ${lengthWords(wanted, set)}`;
}

/** Laps on a tank or charge, with their band. */
export function lapsWords({ laps }: Pick<DayCard, 'laps'>): string {
  const { likely, fewest, most } = laps;
  if (Number.isNaN(likely)) return 'Laps on a tank: no answer';
  const [low, high] = [Math.floor(fewest), Math.floor(most)];
  const band = low === high ? '' : ` (${low} to ${high})`;
  return `Laps on a tank or charge: ${Math.floor(likely)}${band}`;
}

/** What stops the day as it is computed, the weightiest first; each follows on “Stop”. */
export function stopWords(card: DayCard, tested: boolean): readonly string[] {
  const [test] = pullWords(card.testLoad, card.weight);
  const least = Math.min(card.least, Number.isNaN(card.leastInGust) ? card.least : card.leastInGust);
  return [
    ...(tested ? [] : [`: no pull test of ${test} in the log today`]),
    ...(least < card.floor ? [': the pull in gusts comes under the floor'] : []),
    ...(card.greatest > card.testLoad ? [': gusts pull harder than the pull test'] : []),
    ...(card.setUp ? [] : [': nothing on hand keeps the pull between floor and pull test']),
    ...card.broken.map((each) => `: ${each.replace(/\.$/, '')}`),
    ' if the wind is over the rule book or club practice',
    ' if there is lightning, or somebody in the circle',
  ];
}
