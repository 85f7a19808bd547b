import { type BlockCell, inUnitsOf, type ResultDescription, resultAnchor } from '../../../engine/index';
import { QuantitySymbol } from '../../controls/quantity-symbol';
import { useSheet } from '../../store/context';
import { underWords } from '../check/verdict';
import { NumberMenu } from '../shared/number-menu';

/** One result: value with unit, its change from the baseline, and the usual band where the trade has one. */
export function ResultRow({ cell, result }: { cell: BlockCell; result: ResultDescription }) {
  const sheet = useSheet();
  const path = `${cell.name}.${result.name}`;
  const band = sheet.usualBand(path);
  const low = sheet.under(path);
  const info = sheet.name(path);
  return (
    <div class="result" title={inUnitsOf(result.doc, sheet.units())}>
      <QuantitySymbol of={result.symbol} />
      <span class="field-title">
        <NumberMenu path={path} title={result.title} to={resultAnchor(cell.of, result.name)} />
      </span>
      <output aria-live="off" data-value={path} class={low ? 'too-low' : ''}>
        {sheet.shown(path)}
      </output>
      <span class="change">{sheet.change(path)}</span>
      {low && info && <p class="aside too-low">{underWords(info, sheet)}.</p>}
      {band && <p class="aside">usually {band} (common practice, no source)</p>}
    </div>
  );
}
