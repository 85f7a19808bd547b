import type { ComponentChildren } from 'preact';
import { type Command, Menu } from '../../controls/menu';

interface RowMenuProps {
  /** What people call the row. */
  readonly title: string;
  readonly class?: string;
  /** Place in its list, and how long the list is. */
  readonly at: number;
  readonly count: number;
  /** The last one has to stay. */
  readonly stays?: boolean;
  onChange(): void;
  onMove(by: 1 | -1): void;
  onRemove(): void;
  onCopy?(): void;
  /** What can be made of it. */
  making?(): readonly Command[];
  readonly children: ComponentChildren;
}

/** What can be done with one row of a cell, on its own word. */
export function RowMenu(props: RowMenuProps) {
  const commands = (): readonly Command[] => [
    { words: 'Change', run: props.onChange },
    { words: 'Move up', disabled: props.at === 0, run: () => props.onMove(-1) },
    { words: 'Move down', disabled: props.at === props.count - 1, run: () => props.onMove(1) },
    ...(props.onCopy ? [{ words: 'Copy', run: props.onCopy }] : []),
    ...(props.making?.() ?? []),
    { words: 'Remove', disabled: props.stays, run: props.onRemove },
  ];
  return (
    <Menu
      along="word"
      class={`word row-word ${props.class ?? ''}`}
      label={`${props.title}: commands`}
      commands={commands}
    >
      {props.children}
    </Menu>
  );
}
