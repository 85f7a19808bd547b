import { formatQuantity, type Mend, type MendCost, type MendsCell, type NameInfo } from '../../../engine/index';
import { showValue } from '../../store/show';
import { typedWords } from '../variants/words';

/** What it costs, over the changes that cost the same. */
export const costTitles: Readonly<Record<MendCost, string>> = {
  nothing: 'Costs no weight',
  strength: 'Useful strength',
  lighter: 'A lighter part',
  lead: 'Weight added',
  size: 'Another size or kind',
};

export const wayTitles: Readonly<Record<MendsCell['way'], string>> = {
  to: 'exactly',
  least: 'at least',
  most: 'at most',
};

type Title = (path: string) => string;
type OptionTitle = (path: string, option: string) => string | undefined;

/** "Engine station: −158 mm", "Fin: weighs 6.2 g instead of 9.1 g", "Tail stock: light ply". */
export function mendTitle(
  { path, from, text }: Mend,
  info: NameInfo | undefined,
  title: Title,
  optionTitle: OptionTitle,
): string {
  if (info?.options) return `${title(path)}: ${optionTitle(path, text) ?? text.replaceAll('_', ' ')}`;
  const to = typedWords(text);
  const instead = info ? ` instead of ${formatQuantity(from, info.unit)}` : '';
  return path.endsWith('.weighed') ? `${title(path)}: weighs ${to}${instead}` : `${title(path)}: ${to}${instead}`;
}

/**
 * "beyond its travel by 4 mm", "beyond its travel by 4 mm: Room along the body leaves no more", "comes to 48.2 mm"; blank where it is met
 * within its travel. `room`: the title of the piece that ends it.
 */
export function reachWords(
  { state, beyond, result }: Mend,
  lever: NameInfo | undefined,
  of: NameInfo,
  room?: string,
): string {
  if (state === 'short') return `comes to ${showValue(of, result)}`;
  if (state === 'met' || !lever) return '';
  const by = `beyond its travel by ${formatQuantity(beyond, lever.unit, { difference: true })}`;
  return room === undefined ? by : `${by}: ${room} leaves no more`;
}
