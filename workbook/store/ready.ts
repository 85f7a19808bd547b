import index from '../../data/workbooks/index.json';

/** A sheet that comes with the workbook. */
export interface ReadySheet {
  readonly file: string;
  readonly title: string;
  readonly about: string;
  load(): Promise<string>;
}

const texts = import.meta.glob<string>('../../data/workbooks/*.tetherwright.json', {
  query: '?raw',
  import: 'default',
});

export const readySheets: readonly ReadySheet[] = index.map(({ file, title, about }) => ({
  file,
  title,
  about,
  load: () => loadText(file),
}));

async function loadText(file: string): Promise<string> {
  const load = texts[`../../data/workbooks/${file}`];
  if (!load) throw new RangeError(`data/workbooks/index.json lists ${file}, which isn't there`);
  return await load();
}
