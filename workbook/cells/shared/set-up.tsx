import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { along } from '../../controls/along';

/** The form of a cell, folded away once the cell has what it needs. What is set shows at once in the cell itself. */
export function SetUp(props: { title: string; open: boolean; children: ComponentChildren }) {
  const [open, setOpen] = useState(props.open);
  return (
    <details class="set-up" open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary {...along()}>{props.title}</summary>
      {open && props.children}
    </details>
  );
}
