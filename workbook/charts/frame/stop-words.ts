import { quantityText } from '../../drawing/index';
import type { ChartProps } from './props';
import { inSentence } from './words';

/** What a sentence begins with that is red. */
const STOP = 'Stop: ';

export const isStop = (sentence: string): boolean => sentence.startsWith(STOP);

/** "Stop: the weakest part over pull test is 0.77 now, under 1: it breaks.", of each result shown that is under what it may not come under. */
export const stopSentences = ({ cell, names, values }: Pick<ChartProps, 'cell' | 'names' | 'values'>): string[] =>
  cell.up.flatMap((path) => {
    const info = names.get(path);
    const now = values[info?.slot ?? -1] ?? Number.NaN;
    if (!info?.least || !(now < info.least.at)) return [];
    const { title, least } = info;
    const [is, at] = [now, least.at].map((si) => quantityText(info, si));
    return [`${STOP}the ${inSentence(title)} is ${is} now, under ${at}: ${least.because}.`];
  });
