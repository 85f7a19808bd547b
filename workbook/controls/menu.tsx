import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { along } from './along';

export interface Command {
  readonly words: string;
  readonly disabled?: boolean;
  run(): void;
}
/** A line that leads to another page, beside this one. */
export interface CommandLink {
  readonly words: string;
  readonly href: string;
  readonly target: string;
}

export interface MenuProps {
  /** What the button is called by people who can't see it. */
  label: string;
  class: string;
  /** Asked for when the list opens. */
  commands(): readonly (Command | CommandLink)[];
  /** It is one of the words of a group; `enters`: the one at which Tab enters it. */
  along?: 'enters' | 'word';
  /** Further listeners of the button. */
  grip?: Readonly<Record<string, unknown>>;
  children: ComponentChildren;
}

/** A button that opens a short list of plain commands: by press or Enter; arrows go through it, Escape leaves it. */
export function Menu({ label, class: look, commands, along: place, grip, children }: MenuProps) {
  const open = useSignal(false);
  const room = useRef<HTMLSpanElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const id = useId();
  useLayoutEffect(() => {
    if (!open.value) return;
    const items = itemsOf(room.current);
    items[0]?.focus();
    items.at(-1)?.scrollIntoView({ block: 'nearest' });
  }, [open.value]);
  const close = (): void => {
    open.value = false;
  };
  const listeners = {
    onFocusOut(event: FocusEvent) {
      const to = event.relatedTarget;
      if (!(to instanceof Node && room.current?.contains(to))) close();
    },
    onKeyDown(event: KeyboardEvent) {
      if (!open.value) return;
      const items = itemsOf(room.current);
      const to = placeAfter(event.key, items.indexOf(event.target as HTMLElement), items.length);
      if (event.key === 'Escape') {
        close();
        button.current?.focus();
      } else if (to === undefined) return;
      else items[to]?.focus();
      event.preventDefault();
      event.stopPropagation();
    },
  };
  return (
    <span class="menu" ref={room} {...listeners}>
      <button
        {...grip}
        {...(place ? along(place === 'enters') : {})}
        ref={button}
        type="button"
        class={look}
        aria-label={label}
        aria-haspopup="menu"
        aria-expanded={open.value}
        aria-controls={open.value ? id : undefined}
        onClick={() => {
          open.value = !open.value;
          // Some browsers give no focus to a button that is pressed; without it nothing would notice that it is left.
          if (open.value) button.current?.focus();
        }}
      >
        {children}
      </button>
      {open.value && (
        <span class="menu-list" role="menu" id={id} aria-label="Commands">
          {commands().map((command) => (
            <Item
              key={command.words}
              of={command}
              onTaken={() => {
                close();
                button.current?.focus();
              }}
            />
          ))}
        </span>
      )}
    </span>
  );
}

function Item({ of, onTaken }: { of: Command | CommandLink; onTaken(): void }) {
  const look = { role: 'menuitem', tabIndex: -1, class: 'word' } as const;
  if ('href' in of) {
    return (
      <a {...look} href={of.href} target={of.target} onClick={onTaken}>
        {of.words}
      </a>
    );
  }
  return (
    <button
      {...look}
      type="button"
      disabled={of.disabled}
      onClick={() => {
        onTaken();
        of.run();
      }}
    >
      {of.words}
    </button>
  );
}

const itemsOf = (room: HTMLElement | null): HTMLElement[] =>
  room ? [...room.querySelectorAll<HTMLElement>('[role="menuitem"]:not(:disabled)')] : [];

/** Which of the items a key leads to; undefined for a key that leads nowhere. */
function placeAfter(key: string, at: number, count: number): number | undefined {
  if (key === 'ArrowDown') return (at + 1) % count;
  if (key === 'ArrowUp') return (at < 1 ? count : at) - 1;
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : undefined;
}
