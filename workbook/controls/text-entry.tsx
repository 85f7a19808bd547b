import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { Fault } from '../../engine/index';
import { editorMaker, fetchEditor } from '../editor/index';
import { useSheet } from '../store/context';
import { printing } from '../store/printing';
import { EditorRoom, type Opening } from './editor-room';
import { FaultFlag, faultId } from './fault-flag';
import { tellNotKept } from './not-kept';
import { takePlace } from './place-in-text';

export interface TextEntryProps {
  path: string;
  label: string;
  /** Text as typed; what stands in the field while it is edited. */
  text: string;
  /** What stands there otherwise: the value with its unit. A text at fault stands there as typed. */
  shown: string;
  /** What holds when nothing is typed. */
  placeholder?: string;
  fault?: Fault;
  describedBy?: string;
  class?: string;
  /** Marks a second control for a path that another control carries already. */
  secondary?: boolean;
  /** Sentences of the fault are shown by the caller. */
  faultElsewhere?: boolean;
  /** Tab passes it by: it can be typed at another place too. */
  passedBy?: boolean;
  /** Keys that a touch screen offers; missing: all of them. */
  keys?: 'decimal' | 'numeric';
  /** A text that may be too long for one line of the sheet; it is still one line. */
  long?: boolean;
  onCommit(text: string): void;
  /** Nothing of this edit is left to take back: take back the last edit of the sheet. */
  onUndoBeyond?(): void;
}

/**
 * A place to type any text of the design. It's a plain field until it has the focus; then, where the engine reads the text, an
 * editor takes its place. A draft is kept meanwhile; Enter or leaving it makes one edit of it, Escape leaves the text as it was and offers the draft back.
 */
export function TextEntry(props: TextEntryProps) {
  const sheet = useSheet();
  const field = useRef<HTMLInputElement>(null);
  const draft = useSignal<string | undefined>(undefined);
  const opening = useSignal<Opening | undefined>(undefined);
  // Not the moment to open the editor: a finger or the mouse is down on the field, or a character is being put together in it.
  const busy = useRef(false);
  // The focus comes back after typing: nothing is to be opened.
  const returning = useRef(false);
  const doneTyping = useRef<() => void>(undefined);
  const latest = useRef(props);
  latest.current = props;
  // The text of the last edit from here, as long as the sheet has not answered it.
  const kept = useRef(props.text);
  const describedBy = [props.fault ? faultId(props.path) : '', props.describedBy ?? ''].filter(Boolean).join(' ');

  const keep = (text: string | undefined): void => {
    const trimmed = text?.trim();
    if (trimmed === undefined || trimmed === kept.current || trimmed === latest.current.text) return;
    kept.current = trimmed;
    latest.current.onCommit(trimmed);
  };
  /** Escape: the text stays as it was, and what was typed can be brought back. */
  const abandon = (): void => {
    const typed = draft.value;
    if (typed === undefined || typed.trim() === latest.current.text) return;
    tellNotKept(sheet, typed, (text) => latest.current.onCommit(text));
  };
  /** Ends the typing. The text is kept if there is one. */
  const end = (text: string | undefined): void => {
    draft.value = undefined;
    doneTyping.current?.();
    doneTyping.current = undefined;
    keep(text);
  };
  const openEditor = (): void => {
    const open = (): void => {
      const input = field.current;
      const typed = draft.value;
      const still = input !== null && document.activeElement === input && !busy.current;
      if (!still || typed === undefined || opening.value) return;
      const all = input.selectionStart === 0 && input.selectionEnd === typed.length;
      const selection = all ? undefined : { from: input.selectionStart ?? 0, to: input.selectionEnd ?? 0 };
      opening.value = { draft: typed, selection };
    };
    if (!sheet.takesText(props.path)) return;
    if (editorMaker()) open();
    // Without it, for want of a connection, the plain field goes on.
    else void fetchEditor().then(open, () => {});
  };
  const begin = (text: string): void => {
    draft.value = text;
    kept.current = props.text;
    doneTyping.current?.();
    doneTyping.current = sheet.typing(() => keep(draft.value));
    openEditor();
  };
  /** The focus stays in the place after a key; on a touch screen it goes, and the keyboard with it. */
  const giveBack = (): void => {
    if (matchMedia('(pointer: coarse)').matches) return;
    returning.current = true;
  };
  useLayoutEffect(() => {
    if (returning.current) field.current?.focus();
  }, [opening.value]);
  useLayoutEffect(() => {
    if (draft.value === undefined && field.current === document.activeElement) field.current?.select();
  }, [props.shown]);
  useEffect(() => () => end(draft.value), []);
  const leaveEditor = (text: string | undefined, byKeys: boolean): void => {
    if (!opening.value) return;
    opening.value = undefined;
    if (text === undefined) abandon();
    end(text);
    if (byKeys) giveBack();
  };

  // Both have the same events and a value; only their shape differs.
  const Field = (props.long ? 'textarea' : 'input') as 'input';
  const look = `text-entry ${props.class ?? ''}`;
  return (
    <>
      {opening.value ? (
        <EditorRoom
          class={look}
          grows={!props.long}
          path={props.path}
          attributes={{
            'aria-label': props.label,
            'data-text': props.path,
            ...(props.keys ? { inputmode: props.keys } : {}),
            ...(props.secondary ? {} : { 'data-path': props.path }),
            ...(describedBy ? { 'aria-describedby': describedBy } : {}),
          }}
          text={props.text}
          opening={opening.value}
          onDraft={(text) => {
            draft.value = text;
          }}
          onLeave={leaveEditor}
          onUndoBeyond={() => props.onUndoBeyond?.()}
        />
      ) : (
        <Field
          ref={field}
          {...(props.long ? { rows: 1 } : { type: 'text' })}
          class={look}
          data-path={props.secondary ? undefined : props.path}
          data-text={props.path}
          tabIndex={props.passedBy ? -1 : undefined}
          aria-label={props.label}
          aria-invalid={props.fault?.state === 'fault' ? true : undefined}
          aria-describedby={describedBy || undefined}
          inputmode={props.keys}
          spellcheck={false}
          autocomplete="off"
          autocapitalize="off"
          placeholder={props.placeholder}
          value={draft.value ?? (props.fault?.state === 'fault' ? props.text : props.shown)}
          onPointerDown={() => {
            busy.current = true;
          }}
          onPointerCancel={() => {
            busy.current = false;
          }}
          onCompositionStart={() => {
            busy.current = true;
          }}
          onCompositionEnd={() => {
            busy.current = false;
            openEditor();
          }}
          onClick={() => {
            busy.current = false;
            if (draft.value === undefined) begin(props.text);
            else openEditor();
          }}
          onFocus={(event) => {
            const input = event.currentTarget;
            if (returning.current) {
              returning.current = false;
              input.select();
              return;
            }
            // In a long text a press puts the caret where it's meant; a short one is mostly typed anew.
            const aimed = props.long && busy.current && input.value === props.text;
            input.value = props.text;
            const place = takePlace(input);
            if (place) input.setSelectionRange(place.from, place.to);
            else if (!aimed) input.select();
            begin(props.text);
          }}
          onBeforeInput={(event) => {
            // Typed over a value that has the focus: it gives way.
            if (draft.value === undefined) event.currentTarget.select();
          }}
          onInput={(event) => {
            const text = event.currentTarget.value;
            if (draft.value === undefined) begin(text);
            else draft.value = text;
          }}
          onKeyDown={(event) => {
            const { key, ctrlKey, metaKey, shiftKey } = event;
            const typing = draft.value !== undefined;
            if (key === 'Enter') {
              event.preventDefault();
              if (!typing) begin(props.text);
              else event.currentTarget.blur();
            }
            if (key === 'Escape' && typing) {
              abandon();
              end(undefined);
              event.currentTarget.blur();
            }
            const undo = key.toLowerCase() === 'z' && (ctrlKey || metaKey);
            if (undo && (!typing || draft.value === props.text)) {
              event.preventDefault();
              end(undefined);
              if (shiftKey) sheet.redo();
              else props.onUndoBeyond?.();
            }
          }}
          onBlur={() => {
            busy.current = false;
            if (!opening.value) end(draft.value);
          }}
        />
      )}
      {printing.value && <OnPaper {...props} look={look} />}
      {props.fault && !props.faultElsewhere && <FaultFlag fault={props.fault} />}
    </>
  );
}

/** What stands in the place of the field on paper. */
function OnPaper({ look, text, shown, placeholder, fault }: TextEntryProps & { look: string }) {
  const words = fault?.state === 'fault' ? text : shown;
  return <span class={`${look} on-paper ${words === '' ? 'blank' : ''}`}>{words || placeholder}</span>;
}
