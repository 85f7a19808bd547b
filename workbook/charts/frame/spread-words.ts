import {
  bound,
  formatQuantity,
  type NameInfo,
  type SpreadFactor,
  type SpreadOfResult,
  type SpreadTold,
} from '../../../engine/index';
import { type Names, quantityText } from '../../drawing/index';
import { capital, inSentence, leftOut } from './words';

/** What a factor of a spread is called: "Tip weight", "Weight of engine", "Place of tank". */
export function factorTitle({ path, what, paths }: SpreadFactor, names: Names): string {
  if (paths)
    return paths.map((each, k) => (k === 0 ? capital : inSentence)(names.get(each)?.title ?? each)).join(' and ');
  if (what === 'stuff') return `Weight of what is cut from ${inSentence(stuffTitle(path, names))}`;
  const title = names.get(path)?.title ?? path;
  if (what === 'value') return capital(title);
  // A station is called by its part already, before a colon; a mass is called as its part is.
  const colon = title.indexOf(': ');
  const part = inSentence(what === 'mass' || colon < 0 ? title : title.slice(0, colon));
  if (what === 'mass') return `Weight of ${part}`;
  return what === 'place' ? `Place of ${part}` : `Station ${path.slice(path.lastIndexOf('.') + 1)} of ${part}`;
}

/** A material by its title, which stands before what its density is called; a stack by its own. */
function stuffTitle(path: string, names: Names): string {
  const density = names.get(`${path}.density`)?.title;
  return density?.split(': ')[0] ?? names.get(path)?.title ?? path;
}

/** A share of the variance in whole percent; what is under one is said so. */
export const shareText = (share: number): string =>
  share > 0 && share < 0.005 ? bound('less than 1', '%') : formatQuantity(Math.round(share * 100) / 100, '%');

/** Places in the list of factors, the greatest share first. */
export const orderOf = ({ total }: SpreadOfResult): number[] =>
  total.map((_, k) => k).sort((a, b) => total[b]! - total[a]!);

/** A share below this many standard errors may be nothing. */
const ERRORS = 2;

/** From here up chance alone may make a share more than there is. */
const NEARLY_ALL = 0.95;

/** "Tip weight makes 62 % of the uncertainty of the line pull, line length 30 %." Shares of its variance, each by itself. */
export function sharesSentence(told: SpreadTold, result: SpreadOfResult, names: Names): string {
  const title = inSentence(names.get(result.path)?.title ?? result.path);
  if (result.first.length === 0 || !result.first.every(Number.isFinite)) {
    return result.deviation === 0 ? `Nothing that differs moves the ${title}.` : '';
  }
  const sure = orderOf(result).filter((k) => result.first[k]! > ERRORS * result.firstError[k]!);
  const [most, next] = sure;
  if (most === undefined)
    return `No single thing makes much of the uncertainty of the ${title}: they work together, or there are too few designs to tell.`;
  const name = (k: number): string => factorTitle(told.factors[k]!, names);
  if (result.first[most]! > NEARLY_ALL) return `${name(most)} makes nearly all of the uncertainty of the ${title}.`;
  const head = `${name(most)} makes ${shareText(result.first[most]!)} of the uncertainty of the ${title}`;
  return next === undefined ? `${head}.` : `${head}, ${inSentence(name(next))} ${shareText(result.first[next]!)}.`;
}

/** "12 of 1000 designs have no answer and are left out. 10: too little thrust …" */
export function causesSentence({ causes, designs }: SpreadTold): string {
  const missing = causes.reduce((sum, { count }) => sum + count, 0);
  const named = causes.map(({ reason, count }) => (causes.length === 1 ? reason : `${count}: ${reason}`));
  return [leftOut(missing, designs, 'designs'), ...named].filter(Boolean).join(' ');
}

/** "5 % of 1000 designs lie below 24.1 N, half below 26 N, 95 % below 28.7 N." */
export function percentilesSentence({ designs }: SpreadTold, result: SpreadOfResult, info: NameInfo): string {
  const text = (si: number): string => quantityText(info, si);
  if (Number.isNaN(result.middle)) return '';
  return `${info.title}: of ${designs - result.missing} designs ${bound('5', '%')} lie below ${text(result.low)}, half below ${text(result.middle)}, ${bound('95', '%')} below ${text(result.high)}.`;
}
