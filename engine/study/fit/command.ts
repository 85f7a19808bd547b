import type { FitCell, LogCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { NameInfo } from '../../terms/index';
import { formatQuantity } from '../../units/index';
import { fitNow } from './fit';
import type { FitAnswer } from './told';

type Fit = Omit<FitAnswer, 'revision'>;

/** A fit cell computed, as text and as data. */
export interface ToldFit {
  readonly text: string;
  readonly data: Fit;
  readonly fault?: string;
}

/** A fit cell of the design, run to its end. */
export function tellFit(cell: FitCell, live: Live, names: ReadonlyMap<string, NameInfo>): ToldFit {
  const data = fitNow(live, cell.name);
  if (data.state === 'fault') return { text: '', data, fault: `${cell.name}: ${data.message}` };
  const cells = cellsOf(live.compiled.document);
  const log = cells.find((each): each is LogCell => each.kind === 'log' && each.name === cell.log)!;
  return { text: textOf(data, log, names), data };
}

function textOf(fit: Fit, log: LogCell, names: ReadonlyMap<string, NameInfo>): string {
  const show = (path: string, si: number, difference = false): string => {
    const { unit = '', suffix = '' } = names.get(path) ?? {};
    return formatQuantity(si, unit, { suffix, ...(difference ? { difference, sign: true } : { significant: 5 }) });
  };
  const flights = new Set(fit.numbers.map(({ row }) => row)).size;
  const by = fit.errors === 'scatter' ? 'scatter' : 'stated errors';
  const spread = Number.isNaN(fit.scatter)
    ? ''
    : `; residuals ${formatQuantity(fit.scatter, '')} measuring errors, before ${formatQuantity(fit.scatterBefore, '')}`;
  const head = `${fit.fit}: ${fit.numbers.length} measured numbers of ${flights} flights, ${fit.iterations} iterations${spread}\n`;
  const factors = fit.factors.map((factor) => {
    const { path, before, value, error, determined } = factor;
    const { unit = '', suffix = '' } = names.get(path) ?? {};
    const found = determined
      ? `${show(path, value)} ± ${formatQuantity(error, unit, { suffix, difference: true })} (${by})`
      : factor.end
        ? `${show(path, value)}, at its end`
        : 'not determined';
    return `  ${path}: ${found}, now ${show(path, before)}\n`;
  });
  const pairs = fit.factors.flatMap((a, j) =>
    fit.factors.slice(j + 1).flatMap((b, k) => {
      const r = fit.correlation[j]![j + 1 + k]!;
      return Number.isNaN(r) ? [] : [`  correlation of ${a.path} and ${b.path}: ${formatQuantity(r, '')}\n`];
    }),
  );
  const numbers = fit.numbers.map(({ row, path, measured, fitted, error }) => {
    const label = log.rows[row]?.label || `row ${row + 1}`;
    const off = formatQuantity((measured - fitted) / error, '', { significant: 2 });
    return `  ${label}, ${path}: ${show(path, measured)} measured, ${show(path, fitted)} fitted, ${show(path, measured - fitted, true)} or ${off} errors off\n`;
  });
  return [head, ...factors, ...pairs, ...numbers, ...fit.sentences.map((sentence) => `  ${sentence}\n`)].join('');
}
