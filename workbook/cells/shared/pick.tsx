import type { ComponentChildren } from 'preact';
import { Combobox, type PickOption } from '../../controls/pick/index';

export type { PickOption };

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

/** From so many options on a list is searched and not read through. */
const MANY = 12;

/** One of a list under its label. What the document says and the list doesn't have stays there to be seen. */
export function Pick({ id, label, value, options, none, describedBy, onPick }: PickProps) {
  const known = options.some((option) => option.value === value);
  if (options.length >= MANY) {
    return (
      <Labelled id={id} label={label}>
        <Combobox
          id={id}
          value={value}
          options={options}
          placeholder={value === '' ? (none ?? 'none') : `${value} (not there)`}
          describedBy={describedBy}
          onPick={onPick}
        />
      </Labelled>
    );
  }
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
  readonly options: readonly PickOption[];
  onAdd(value: string): void;
}

/** One of a list, taken as soon as it is picked; the field is free for the next one then. */
export function AddFrom({ id, label, options, onAdd }: AddProps) {
  return (
    <Labelled id={id} label={label}>
      <Combobox id={id} options={options} placeholder="choose, or type to find" onPick={onAdd} />
    </Labelled>
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
