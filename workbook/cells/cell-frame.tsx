import { useComputed } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Cell } from '../../engine/index';
import { along, goAlong } from '../controls/along';
import { FaultFlag } from '../controls/fault-flag';
import { useSheet } from '../store/context';
import { printing } from '../store/printing';
import { Balloon, TitleForm } from './frame/index';
import { kindWords } from './kind-words';
import { lineOf } from './line';

/** Balloon on its leader, kind word, title over a thin rule; no box. A closed cell says its content in one line, and its own faults. */
export function CellFrame({ cell, number, children }: { cell: Cell; number: number; children: ComponentChildren }) {
  const sheet = useSheet();
  const folded = cell.folded ?? false;
  const faults = sheet.faultsOfCell(cell.id);
  const own = faults.filter((fault) => fault.path === cell.name || folded);
  const bodyId = `body-${cell.id}`;
  const onPaper = printing.value;
  const shown = !folded || onPaper;
  const naming = useComputed(() => sheet.naming.value === cell.id).value;
  const carried = useComputed(() => sheet.carrying.value?.id === cell.id).value;

  return (
    <article
      class={`cell cell-${cell.kind} ${carried ? 'carried' : ''}`}
      id={`cell-${cell.name}`}
      aria-labelledby={`title-${cell.id}`}
      style={onPaper ? { order: number } : undefined}
      onKeyDown={goAlong}
    >
      <header class="cell-head">
        <Balloon cell={cell} number={number} />
        <span class="kind">{kindWords[cell.kind]}</span>
        <h2 id={`title-${cell.id}`}>{cell.title}</h2>
        {folded && <ClosedLine cell={cell} />}
        <button
          type="button"
          {...along()}
          class="word quiet fold"
          aria-expanded={!folded}
          aria-controls={bodyId}
          onClick={() => sheet.fold(cell, !folded)}
        >
          {folded ? 'Open' : 'Close'}
          <span class="unseen"> {cell.title}</span>
        </button>
      </header>
      {naming && <TitleForm cell={cell} />}
      {own.map((fault) => (
        <FaultFlag key={fault.path} fault={fault} named={fault.path === cell.name} />
      ))}
      <div id={bodyId} class="cell-body" hidden={!shown}>
        {shown && children}
      </div>
    </article>
  );
}

/** What a closed cell holds. */
function ClosedLine({ cell }: { cell: Cell }) {
  const { words, stands } = lineOf(cell, useSheet());
  return <span class={`closed-line ${stands === 'broken' || stands === 'low' ? 'broken' : ''}`}>{words}</span>;
}
