import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { Fault } from '../../engine/index';
import { FaultFlag, faultId } from './fault-flag';

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
  /** A text that may be too long for one line of the sheet; it is still one line. */
  long?: boolean;
  onCommit(text: string): void;
  /** Nothing of this edit is left to take back: take back the last edit of the sheet. */
  onUndoBeyond?(): void;
}

/** A place to type any text of the design. It keeps a draft while it has the focus; Enter or leaving it makes one edit of it. */
export function TextEntry(props: TextEntryProps) {
  const draft = useSignal<string | undefined>(undefined);
  const abandoned = useRef(false);

  const commit = () => {
    const text = draft.value;
    draft.value = undefined;
    if (!abandoned.current && text !== undefined && text.trim() !== props.text) props.onCommit(text.trim());
    abandoned.current = false;
  };
  // Both have the same events and a value; only their shape differs.
  const Field = (props.long ? 'textarea' : 'input') as 'input';
  const describedBy = [props.fault ? faultId(props.path) : '', props.describedBy ?? ''].filter(Boolean).join(' ');

  return (
    <>
      <Field
        {...(props.long ? { rows: 1 } : { type: 'text' })}
        class={`text-entry ${props.class ?? ''}`}
        data-path={props.secondary ? undefined : props.path}
        data-text={props.path}
        aria-label={props.label}
        aria-invalid={props.fault?.state === 'fault' ? true : undefined}
        aria-describedby={describedBy || undefined}
        spellcheck={false}
        autocomplete="off"
        autocapitalize="off"
        placeholder={props.placeholder}
        value={draft.value ?? (props.fault?.state === 'fault' ? props.text : props.shown)}
        onFocus={(event) => {
          draft.value = props.text;
          const field = event.currentTarget;
          field.value = props.text;
          field.select();
        }}
        onInput={(event) => {
          draft.value = event.currentTarget.value;
        }}
        onKeyDown={(event) => {
          if (event.key === 'Enter') {
            event.preventDefault();
            event.currentTarget.blur();
          }
          if (event.key === 'Escape') {
            abandoned.current = true;
            event.currentTarget.blur();
          }
          const undo = event.key === 'z' && (event.ctrlKey || event.metaKey) && !event.shiftKey;
          if (undo && draft.value === props.text && props.onUndoBeyond) {
            event.preventDefault();
            abandoned.current = true;
            event.currentTarget.blur();
            props.onUndoBeyond();
          }
        }}
        onBlur={commit}
      />
      {props.fault && !props.faultElsewhere && <FaultFlag fault={props.fault} />}
    </>
  );
}
