import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';

export interface PickOption {
  readonly value: string;
  readonly title: string;
  /** Options of one group stand together under its title. */
  readonly group?: string;
}
interface PickProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly PickOption[];
  /** What stands there when `value` is none of the options. */
  readonly none?: string;
  readonly describedBy?: string;
  onPick(value: string): void;
}

/** One of a list under its label. What the document says and the list doesn't have stays there to be seen. */
export function Pick({ id, label, value, options, none, describedBy, onPick }: PickProps) {
  const known = options.some((option) => option.value === value);
  return (
    <Labelled id={id} label={label}>
      <select
        id={id}
        value={value}
        aria-describedby={describedBy}
        onChange={({ currentTarget }) => onPick(currentTarget.value)}
      >
        {!known && <option value={value}>{value === '' ? (none ?? 'none') : `${value} (not there)`}</option>}
        <Options of={options} />
      </select>
    </Labelled>
  );
}

function Options({ of }: { of: readonly PickOption[] }) {
  const groups = [...new Set(of.map((option) => option.group))];
  return (
    <>
      {groups.map((group) => {
        const lines = of
          .filter((option) => option.group === group)
          .map((option) => (
            <option key={option.value} value={option.value}>
              {option.title}
            </option>
          ));
        return group === undefined ? (
          lines
        ) : (
          <optgroup key={group} label={group}>
            {lines}
          </optgroup>
        );
      })}
    </>
  );
}

interface AddProps {
  readonly id: string;
  readonly label: string;
  /** "axis", "result". */
  readonly what: string;
  readonly options: readonly PickOption[];
  onAdd(value: string): void;
}

/** One of a list, taken by a press of its own: keys that run through the list take nothing yet. */
export function AddFrom({ id, label, what, options, onAdd }: AddProps) {
  const [picked, setPicked] = useState('');
  const there = options.some((option) => option.value === picked) ? picked : '';
  return (
    <div class="add-from">
      <label for={id}>{label}</label>
      <span>
        <select id={id} value={there} onChange={({ currentTarget }) => setPicked(currentTarget.value)}>
          <option value="">choose</option>
          <Options of={options} />
        </select>
        <button
          type="button"
          class="word"
          disabled={there === ''}
          onClick={() => {
            setPicked('');
            onAdd(there);
          }}
        >
          Add<span class="unseen"> this {what}</span>
        </button>
      </span>
    </div>
  );
}

export function Labelled({ id, label, children }: { id: string; label: string; children: ComponentChildren }) {
  return (
    <div>
      <label for={id}>{label}</label>
      {children}
    </div>
  );
}
