import { useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useId, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { PickListBox } from './list-box';
import { findOptions, type PickOption } from './search';

export interface ComboboxProps {
  readonly id: string;
  /** Where no label points at `id`. */
  readonly label?: string;
  /** The place of the sheet that it sets, and whether what stands there is at fault. */
  readonly path?: string;
  readonly invalid?: boolean;
  readonly options: readonly PickOption[];
  /** What is picked now; its title stands in the field. */
  readonly value?: string;
  /** What stands in the field while nothing is picked or typed. */
  readonly placeholder: string;
  readonly describedBy?: string;
  /** The list is open from the start. */
  readonly opened?: boolean;
  onPick(value: string): void;
}

/**
 * A field with a list: typing narrows the list, arrows go through it, Enter or a press takes one (WAI-ARIA combobox with a list
 * that the text filters). Leaving it without taking one, or Escape, leaves what was picked.
 */
export function Combobox(props: ComboboxProps) {
  const { id, options, value, placeholder } = props;
  const listId = useId();
  const room = useRef<HTMLDivElement>(null);
  const open = useSignal(props.opened ?? false);
  const typed = useSignal<string | undefined>(undefined);
  const at = useSignal(-1);
  const picked = options.find((option) => option.value === value);
  const text = typed.value;
  const found = useMemo(() => findOptions(options, text ?? ''), [options, text]);
  const count = found.shown.length;
  const active = open.value ? found.shown[at.value] : undefined;
  useLayoutEffect(() => {
    if (active) room.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [active]);

  const show = (place: number): void => {
    open.value = true;
    at.value = place;
  };
  const close = (): void => {
    open.value = false;
    typed.value = undefined;
    at.value = -1;
  };
  const leave = useLeaving(room, open.value, close);
  const take = (option: PickOption): void => {
    close();
    props.onPick(option.value);
  };
  const now = picked ? found.shown.indexOf(picked) : -1;
  const onKeyDown = (event: KeyboardEvent): void => {
    // A key may come before what was typed last is drawn.
    const { shown } = findOptions(options, typed.value ?? '');
    const last = shown.length - 1;
    const chosen = open.value ? shown[at.value] : undefined;
    const to = open.value ? placeAfter(event.key, at.value, last) : OPENS.has(event.key) ? now : undefined;
    if (to !== undefined) show(event.altKey && !open.value ? now : Math.max(to, 0));
    else if (event.key === 'Enter' && chosen) take(chosen);
    else if (event.key === 'Escape' && open.value) close();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div class="combobox" ref={room} onFocusOut={leave}>
      <input
        id={id}
        class="text-entry"
        type="text"
        role="combobox"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        data-path={props.path}
        aria-label={props.label}
        aria-invalid={props.invalid ? true : undefined}
        aria-describedby={props.describedBy}
        aria-autocomplete="list"
        aria-expanded={open.value}
        aria-controls={open.value ? listId : undefined}
        aria-activedescendant={active ? optionId(listId, at.value) : undefined}
        placeholder={picked ? undefined : placeholder}
        value={text ?? picked?.title ?? ''}
        onFocus={(event) => event.currentTarget.select()}
        onClick={() => !open.value && show(now)}
        onInput={(event) => {
          typed.value = event.currentTarget.value;
          show(typed.value.trim() === '' ? -1 : 0);
        }}
        onKeyDown={onKeyDown}
      />
      {open.value && (
        <PickListBox
          id={listId}
          found={found}
          active={at.value}
          now={value}
          idOf={(place) => optionId(listId, place)}
          onTake={take}
        />
      )}
      <span class="unseen" role="status">
        {open.value && (count === 0 ? 'Nothing fits.' : `${count + found.more} to pick from.`)}
      </span>
    </div>
  );
}

/**
 * Closes what was left, once the press that took the focus away is over: what stands below a list that closes moves up, and the press
 * would miss it.
 */
function useLeaving(room: RefObject<HTMLElement | null>, open: boolean, close: () => void): () => void {
  const pressed = useRef(false);
  /** The press is on the list or its field: a finger's click may come long after it is lifted, and finds the list there. */
  const within = useRef(false);
  const leave = (): void => {
    setTimeout(() => {
      if (!pressed.current && !room.current?.contains(document.activeElement)) close();
    });
  };
  useLayoutEffect(() => {
    if (!open) return;
    const press = (event: Event): void => {
      pressed.current = true;
      within.current = room.current?.contains(event.target as Node | null) ?? false;
    };
    const release = (): void => {
      pressed.current = false;
      if (!within.current) leave();
    };
    const heard = [['pointerdown', press] as const, ...RELEASES.map((name) => [name, release] as const)];
    for (const [name, listener] of heard) document.addEventListener(name, listener, true);
    return () => {
      pressed.current = false;
      for (const [name, listener] of heard) document.removeEventListener(name, listener, true);
    };
  }, [open]);
  return leave;
}
const RELEASES = ['pointerup', 'pointercancel'] as const;

const optionId = (list: string, place: number): string => `${list}-${place}`;
const OPENS: ReadonlySet<string> = new Set(['ArrowDown', 'ArrowUp']);

/** Which option a key of an open list leads to; undefined for a key that leads nowhere. */
function placeAfter(key: string, at: number, last: number): number | undefined {
  if (last < 0) return undefined;
  if (key === 'ArrowDown') return at >= last ? 0 : at + 1;
  if (key === 'ArrowUp') return at <= 0 ? last : at - 1;
  return undefined;
}
