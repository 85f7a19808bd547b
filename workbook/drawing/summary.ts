import type { Picture } from './picture';

/** The drawing in words, for those who hear it. */
export function pictureSummary(title: string, picture: Picture): string {
  const said = [...picture.labels.map((l) => l.said), ...picture.unplaced];
  const views = [picture.frame.views.plan && 'plan', picture.frame.views.side && 'side view']
    .filter(Boolean)
    .join(' and ');
  const sentences = [`${title}: ${views}, scale 1 : ${picture.frame.denominator}.`];
  if (said.length > 0) sentences.push(`${said.join('; ')}.`);
  if (picture.moved.length > 0) sentences.push(`Stands elsewhere in the baseline: ${picture.moved.join(', ')}.`);
  return sentences.join(' ');
}
