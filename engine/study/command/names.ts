import type { NameInfo } from '../../terms/index';

/** One name a line, its parts set apart by tabs. */
export function nameLine({ path, kind, unit, suffix, title, doc, options }: NameInfo): string {
  const what = options ? `one of ${options.join(', ')}` : suffix || unit || 'plain number';
  return `${path}\t${what}\t${kind}\t${[title, doc].filter(Boolean).join(': ')}\n`;
}

export const nameData = ({ path, kind, unit, suffix, title, doc, options, settable }: NameInfo) => ({
  name: path,
  kind,
  unit: suffix || unit,
  title,
  doc,
  settable,
  ...(options ? { options } : {}),
});
