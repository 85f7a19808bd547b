import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';

/** A design of few pieces on three sheets; most tests look at this one, since the demo, with every study on it, takes longer. */
export const QUERN = fileURLToPath(new URL('../designs/quern.tetherwright.json', import.meta.url));
/** The same model on a windy day, with weights on hand, a table and levers. */
export const FLYING_DAY = fileURLToPath(new URL('../designs/flying-day.tetherwright.json', import.meta.url));

/** Opens a file as somebody does who picks it; `file`: its path, or its name and content. */
export async function openDesign(page: Page, file: Parameters<Page['setInputFiles']>[1]): Promise<void> {
  await page.locator('input[type="file"]').first().setInputFiles(file);
}

let opened = 0;

/** Opens the small design once more, after an empty one, so that nothing which an earlier test has unfolded or typed stays in its place. */
export async function openSmallDesign(page: Page): Promise<void> {
  const small = readFileSync(QUERN, 'utf8');
  const empty = JSON.stringify({ ...JSON.parse(small), sheets: [{ id: 'empty', title: 'Empty', pieces: [] }] });
  for (const text of [empty, small]) {
    opened += 1;
    const name = `opened-${opened}.tetherwright.json`;
    await openDesign(page, { name, mimeType: 'application/json', buffer: Buffer.from(text) });
    await page.locator(`button[title="Take back: opening ${name}"]`).waitFor();
  }
}

/** The small design and the same model on a windy day, in one file. */
export function twoDesigns(): { name: string; mimeType: string; buffer: Buffer } {
  const [small, flying] = [QUERN, FLYING_DAY].map((file) => JSON.parse(readFileSync(file, 'utf8')));
  const file = { format: 'tetherwright_designs', version: 1, designs: [small, { ...flying, title: 'Flying day' }] };
  const buffer = Buffer.from(JSON.stringify(file));
  return { name: 'two.tetherwright.json', mimeType: 'application/json', buffer };
}

/** The small design with a sheet “Changes” on top: what brings its CG forward, the best compromises, two variants side by side, the bench with parts on it, and a CG that was found. */
export function smallDesignWithChanges(): { name: string; mimeType: string; buffer: Buffer } {
  const small = JSON.parse(readFileSync(QUERN, 'utf8'));
  const wanted = ['parts.mass', 'flight.pull', 'flight.lap_time'];
  const mends = {
    kind: 'what_mends',
    id: 'm1',
    name: 'cg_mends',
    title: 'What brings the CG forward',
    of: 'balance.cg_x',
  };
  const pieces = [
    { ...mends, way: 'to', text: '40 mm', wanted },
    {
      ...{
        kind: 'best_compromises',
        id: 'm3',
        name: 'best',
        title: 'Least weight and most pull',
        wanted: wanted.slice(2),
      },
      axes: ['engine_station', 'tip_weight'].map((of) => ({ of, low: '', high: '', count: 5 })),
      goals: wanted.slice(0, 2).map((of, k) => ({ of, way: k === 0 ? 'least' : 'most' })),
    },
    { kind: 'variants', id: 'm2', name: 'side_by_side', title: 'Side by side', wanted },
    {
      ...{ kind: 'weighing', id: 'm4', name: 'bench', title: 'Weigh the parts', parts: 'parts' },
      ...{ order: ['parts.engine', 'parts.stabiliser'], text: '40 mm', within: '3 mm' },
    },
    {
      ...{ kind: 'model', id: 'm5', name: 'found_cg', title: 'Find the CG', of: 'found_cg' },
      fields: { finger: '60 mm', whole: '900 g' },
    },
  ];
  const onScale: Readonly<Record<string, string>> = { engine: '174 g', stabiliser: '16 g' };
  const weighed = (row: { name: string; fields: object }): object => {
    const text = onScale[row.name];
    return text === undefined ? row : { ...row, weighed_as: 'light_ply', fields: { ...row.fields, weighed: text } };
  };
  const others = small.sheets.map((sheet: { pieces: { kind: string; rows: [] }[] }) => ({
    ...sheet,
    pieces: sheet.pieces.map((piece) => (piece.kind === 'parts' ? { ...piece, rows: piece.rows.map(weighed) } : piece)),
  }));
  const variants = [
    { name: 'Engine station: −157.5 mm instead of −150 mm', changes: { engine_station: '-157.5 mm' } },
    { name: 'Long lines and more tip weight', changes: { line_length: '20 m', tip_weight: '26 g' } },
  ];
  const sheets = [{ id: 'changes', title: 'Changes', pieces }, ...others];
  const text = JSON.stringify({ ...small, sheets, variants });
  return { name: 'changes.tetherwright.json', mimeType: 'application/json', buffer: Buffer.from(text) };
}
