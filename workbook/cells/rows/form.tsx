import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { rename } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { firstUnit, unitGroups } from './units';

/** One line of a form: what it is, where it is typed, what it means. */
export function FormRow(props: { word: string; about?: ComponentChildren; children: ComponentChildren }) {
  return (
    <div class="form-row">
      <span class="form-word">{props.word}</span>
      {props.children}
      {props.about !== undefined && <p class="aside">{props.about}</p>}
    </div>
  );
}

interface WordsProps {
  readonly word: string;
  /** What is typed, for people who see only this control. */
  readonly label: string;
  /** A name of the place; nothing that the engine reads. */
  readonly path: string;
  readonly text: string;
  readonly about?: ComponentChildren;
  readonly placeholder?: string;
  onCommit(text: string): void;
}

/** Words for people. */
export function WordsRow({ word, about, ...entry }: WordsProps) {
  const sheet = useSheet();
  return (
    <FormRow word={word} about={about}>
      <TextEntry {...entry} shown={entry.text} onUndoBeyond={sheet.undo} />
    </FormRow>
  );
}

interface NameProps {
  /** Path of what has the name. */
  readonly path: string;
  /** What people call it. */
  readonly title: string;
  /** It goes on under another name. */
  onRenamed?(name: string): void;
}

/** The name in formulas of anything that can be renamed; every formula follows. A refusal stands beneath. */
export function NameRow({ path, title, onRenamed }: NameProps) {
  const sheet = useSheet();
  const refused = useSignal('');
  const name = path.slice(path.lastIndexOf('.') + 1);
  const commit = (to: string): void => {
    refused.value = '';
    sheet.edit((document) => {
      const renamed = rename(document, path, to);
      if (!renamed.ok) {
        refused.value = `${renamed.message} It is still called ${name}.`;
        return [];
      }
      onRenamed?.(to);
      return renamed.changes;
    }, `the name of ${title}`);
  };
  return (
    <>
      <WordsRow
        word="Name"
        label={`Name of ${title} in formulas`}
        path={`${path}#name`}
        text={name}
        about={`Formulas say ${path}; they follow when it changes.`}
        onCommit={commit}
      />
      <p class="fault-words" role="alert">
        {refused.value}
      </p>
    </>
  );
}

interface UnitProps {
  readonly label: string;
  readonly unit: string;
  /** What no unit stands for. */
  readonly blank: string;
  onPick(unit: string): void;
}

/** What kind of quantity it is, and a unit of that kind. */
export function UnitRow({ label, unit, blank, onPick }: UnitProps) {
  const sheet = useSheet();
  const groups = unitGroups();
  const at = groups.findIndex((group) => group.units.some((each) => each.name === unit));
  const kind = unit === '' ? '' : String(at);
  return (
    <FormRow word="Unit">
      <span class="unit-pick">
        <select
          aria-label={`${label}: kind of quantity`}
          value={kind}
          onChange={({ currentTarget: { value } }) => onPick(firstUnit(groups[Number(value || -1)], sheet.units()))}
        >
          <option value="">{blank}</option>
          {unit !== '' && at < 0 && <option value="-1">{unit}</option>}
          {groups.map((group, k) => (
            <option key={group.words} value={k}>
              {group.words}
            </option>
          ))}
        </select>
        {at >= 0 && (
          <select aria-label={label} value={unit} onChange={({ currentTarget }) => onPick(currentTarget.value)}>
            {groups[at]!.units.map(({ name, title }) => (
              <option key={name} value={name}>
                {name === title ? name : `${name}, ${title}`}
              </option>
            ))}
          </select>
        )}
      </span>
    </FormRow>
  );
}
