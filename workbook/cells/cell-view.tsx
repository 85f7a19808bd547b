import type { Cell } from '../../engine/index';
import { BlockView } from './block/view';
import { CellFrame } from './cell-frame';
import { ChartView } from './chart/view';
import { CheckView } from './check/view';
import { ChoiceView } from './choice/view';
import { DrawingView } from './drawing/view';
import { FitView } from './fit/view';
import { FormulaView } from './formula/view';
import { LeversView } from './levers/view';
import { LogView } from './log/view';
import { NoteView } from './note/view';
import { PartsView } from './parts/view';
import { SpreadView } from './spread/view';
import { SweepView } from './sweep/view';
import { TableView } from './table/view';
import { VariablesView } from './variables/view';

/** One numbered piece of the sheet. */
export function CellView({ cell, number }: { cell: Cell; number: number }) {
  return (
    <CellFrame cell={cell} number={number}>
      <Content cell={cell} />
    </CellFrame>
  );
}

function Content({ cell }: { cell: Cell }) {
  switch (cell.kind) {
    case 'note':
      return <NoteView cell={cell} />;
    case 'variables':
      return <VariablesView cell={cell} />;
    case 'choice':
      return <ChoiceView cell={cell} />;
    case 'formula':
      return <FormulaView cell={cell} />;
    case 'model':
      return <BlockView cell={cell} />;
    case 'parts':
      return <PartsView cell={cell} />;
    case 'drawing':
      return <DrawingView title={cell.title} />;
    case 'trial_series':
      return <SweepView cell={cell} />;
    case 'tolerances':
      return <SpreadView cell={cell} />;
    case 'what_helps':
      return <LeversView cell={cell} />;
    case 'chart':
      return <ChartView cell={cell} />;
    case 'table':
      return <TableView cell={cell} />;
    case 'check':
      return <CheckView cell={cell} />;
    case 'log':
      return <LogView cell={cell} />;
    case 'fit':
      return <FitView cell={cell} />;
  }
}
