import type { ComponentType } from 'preact';
import type { Cell, CellKind } from '../../engine/index';
import { BestView } from './best/view';
import { BlockView } from './block/view';
import { ChartView } from './chart/view';
import { CheckView } from './check/view';
import { ChoiceView } from './choice/view';
import { DrawingView } from './drawing/view';
import { FitView } from './fit/view';
import { FormulaView } from './formula/view';
import { GuessView } from './guess/view';
import { LeversView } from './levers/view';
import { LogView } from './log/view';
import { MendsView } from './mends/view';
import { NoteView } from './note/view';
import { PartsView } from './parts/view';
import { SpreadView } from './spread/view';
import { SweepView } from './sweep/view';
import { TableView } from './table/view';
import { VariablesView } from './variables/view';
import { VariantsView } from './variants/view';
import { WeighingView } from './weighing/view';

/** A cell of one kind. */
export type CellOf<K extends CellKind> = Extract<Cell, { readonly kind: K }>;

/** What shows each kind of cell; a kind without its view does not compile. */
export const views: { readonly [K in CellKind]: ComponentType<{ cell: CellOf<K> }> } = {
  note: NoteView,
  variables: VariablesView,
  choice: ChoiceView,
  formula: FormulaView,
  model: BlockView,
  parts: PartsView,
  drawing: ({ cell }) => <DrawingView cell={cell} />,
  trial_series: SweepView,
  tolerances: SpreadView,
  what_helps: LeversView,
  chart: ChartView,
  table: TableView,
  check: CheckView,
  log: LogView,
  fit: FitView,
  variants: VariantsView,
  what_mends: MendsView,
  best_compromises: BestView,
  weighing: WeighingView,
  guess: GuessView,
};
