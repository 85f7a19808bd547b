import { inSentence, listed } from './words';

/** "Lines of CG, mm over engine station, mm; one each: balsa, 5 mm; light ply, 3 mm." */
export function aboutChart(
  kind: string,
  of: readonly string[],
  over: readonly string[],
  each: readonly string[] = [],
): string {
  const shown = of.length > 0 ? ` of ${listed(of.map(inSentence))}` : '';
  const axes = over.length > 0 ? ` over ${listed(over.map(inSentence))}` : '';
  const named = each.filter((name) => name !== '');
  return `${kind}${shown}${axes}${named.length > 0 ? `; one each: ${named.join('; ')}` : ''}.`;
}
