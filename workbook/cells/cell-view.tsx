import type { Cell } from '../../engine/index';
import { BlockView } from './block';
import { CellFrame } from './cell-frame';
import { ChartView } from './chart';
import { CheckView } from './check';
import { ChoiceView } from './choice';
import { DrawingView } from './drawing';
import { FitView } from './fit';
import { FormulaView } from './formula';
import { LeversView } from './levers';
import { LogView } from './log';
import { NoteView } from './note';
import { PartsView } from './parts';
import { SpreadView } from './spread';
import { SweepView } from './sweep';
import { TableView } from './table';
import { VariablesView } from './variables';

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
    case 'block':
      return <BlockView cell={cell} />;
    case 'parts':
      return <PartsView cell={cell} />;
    case 'drawing':
      return <DrawingView title={cell.title} />;
    case 'sweep':
      return <SweepView cell={cell} />;
    case 'spread':
      return <SpreadView cell={cell} />;
    case 'levers':
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
