import type { NameInfo } from '../../../engine/index';

/** What a thing that differs is called; the mass of a part is called as the part is, so its weight is said. */
export function titleOfRow(of: string, info: NameInfo | undefined): string {
  const title = info?.title ?? of;
  return info?.kind === 'part' && of.endsWith('.mass') ? `${title}: weight` : title;
}
