import type { ComponentChildren } from 'preact';
import type { Cell } from '../../engine/index';
import { FaultFlag } from '../controls/fault-flag';
import { useSheet } from '../store/context';
import { kindWords } from './kind-words';

/** Balloon on its leader, kind word, title over a thin rule; no box. A folded cell shows no more than this and its own faults. */
export function CellFrame({ cell, number, children }: { cell: Cell; number: number; children: ComponentChildren }) {
  const sheet = useSheet();
  const folded = cell.folded ?? false;
  const faults = sheet.faultsOfCell(cell.id);
  const own = faults.filter((fault) => fault.path === cell.name || folded);
  const bodyId = `body-${cell.id}`;

  return (
    <article class={`cell cell-${cell.kind}`} id={`cell-${cell.name}`} aria-labelledby={`title-${cell.id}`}>
      <header class="cell-head">
        <span class="balloon" aria-hidden="true">
          {number}
        </span>
        <span class="kind">{kindWords[cell.kind]}</span>
        <h2 id={`title-${cell.id}`}>{cell.title}</h2>
        <button
          type="button"
          class="word quiet fold"
          aria-expanded={!folded}
          aria-controls={bodyId}
          onClick={() => sheet.fold(cell, !folded)}
        >
          {folded ? 'unfold' : 'fold'}
          <span class="unseen"> {cell.title}</span>
        </button>
      </header>
      {own.map((fault) => (
        <FaultFlag key={fault.path} fault={fault} named={fault.path === cell.name} />
      ))}
      <div id={bodyId} class="cell-body" hidden={folded}>
        {!folded && children}
      </div>
    </article>
  );
}
