import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { type FirstDesignForm, type FormField, type FormProblem, unparted } from '../../../engine/index';
import { useDesigns } from '../../store/designs';

interface Entry {
  readonly name: Exclude<keyof FirstDesignForm, 'title' | 'drive' | 'tail_stock'>;
  readonly field: FormField;
  readonly label: string;
  readonly hint: string;
  /** What is taken when it is left blank. */
  readonly blank?: string;
}

const SIZES = {
  engine: { name: 'size', field: 'displacement', label: 'Displacement', hint: 'as 4.1 cm³, .25 cu in or a 25' },
  motor: { name: 'size', field: 'motor_power', label: 'Electric power in flight', hint: 'as 370 W' },
} as const satisfies Record<FirstDesignForm['drive'], Entry>;

const WING: readonly Entry[] = [
  { name: 'span', field: 'span', label: 'Span', hint: 'as 1 m or 40 in' },
  { name: 'chord', field: 'chord', label: 'Mean chord', hint: 'as 200 mm', blank: 'a fifth of the span' },
];
const PROPELLER: Entry = {
  name: 'propeller',
  field: 'propeller',
  label: 'Propeller',
  hint: 'as 9x6',
  blank: 'by engine or motor size',
};
const LINES: readonly Entry[] = [
  {
    name: 'line_length',
    field: 'line_length',
    label: 'Line length',
    hint: 'as 18.3 m or 60 ft',
    blank: 'by engine or motor size',
  },
  {
    name: 'line_diameter',
    field: 'line_diameter',
    label: 'Line diameter',
    hint: 'as 0.38 mm or .015 in',
    blank: 'by engine or motor size',
  },
  { name: 'line_count', field: 'line_count', label: 'How many lines', hint: 'as 2', blank: 'two' },
];
const known = (drive: FirstDesignForm['drive']): readonly Entry[] => [
  {
    name: 'weight',
    field: 'weight',
    label: drive === 'engine' ? 'Weight, tank empty' : 'Weight with battery',
    hint: 'if it is weighed, as 850 g',
    blank: 'estimated',
  },
  { name: 'lap_time', field: 'lap_time', label: 'Lap time', hint: 'if it has flown, as 4.9 s', blank: 'not flown yet' },
];

const STOCKS = [
  ['balsa', 'balsa'],
  ['balsa_ply', 'balsa with ply faces'],
  ['light_ply', 'light ply'],
] as const satisfies readonly (readonly [FirstDesignForm['tail_stock'], string])[];

const NOTHING: FirstDesignForm = {
  title: '',
  drive: 'engine',
  span: '',
  chord: '',
  size: '',
  line_length: '',
  weight: '',
  propeller: '',
  line_diameter: '',
  line_count: '',
  lap_time: '',
  tail_stock: 'balsa',
};

/** The short form from which a first design is made: a sheet that flies, with every assumption in it, to be corrected. */
export function FirstDesign({ onClose }: { onClose: () => void }) {
  const designs = useDesigns();
  const dialog = useRef<HTMLDialogElement>(null);
  const form = useSignal(NOTHING);
  const problems = useSignal<readonly FormProblem[]>([]);
  const busy = useSignal(false);
  useEffect(() => {
    dialog.current?.showModal();
    if (!matchMedia('(pointer: coarse)').matches) dialog.current?.querySelector('input')?.focus();
  }, []);

  async function make(): Promise<void> {
    if (!designs || busy.value) return;
    busy.value = true;
    problems.value = await designs.firstDesign(form.value);
    busy.value = false;
    if (problems.value.length === 0) dialog.current?.close();
    else setTimeout(() => dialog.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
  }

  const entries = (list: readonly Entry[]) =>
    list.map((entry) => <EntryField key={entry.field} entry={entry} form={form} problems={problems.value} />);

  return (
    <dialog ref={dialog} class="open-dialog wide-dialog" aria-labelledby="first-design-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="first-design-title">Begin with my model</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <p>
        From these few numbers a whole first design is made by rules of thumb (common practice, no source). It is there
        to be corrected: every size and weight that was assumed stands in the sheet.
      </p>
      <form
        class="first-design"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void make();
        }}
      >
        <label class="form-entry">
          <span class="form-label">Name</span>
          <input
            class="text-entry"
            name="title"
            autocomplete="off"
            placeholder="First design"
            value={form.value.title}
            onInput={(event) => {
              form.value = { ...form.value, title: event.currentTarget.value };
            }}
          />
        </label>
        <fieldset>
          <legend>Wing</legend>
          {entries(WING)}
        </fieldset>
        <fieldset>
          <legend>Engine or motor</legend>
          <p class="form-choice">
            {(['engine', 'motor'] as const).map((drive) => (
              <label key={drive}>
                <input
                  type="radio"
                  name="drive"
                  value={drive}
                  checked={form.value.drive === drive}
                  onChange={() => {
                    form.value = { ...form.value, drive };
                    problems.value = [];
                  }}
                />{' '}
                {drive === 'engine' ? 'two-stroke engine' : 'electric motor'}
              </label>
            ))}
          </p>
          {entries([SIZES[form.value.drive], PROPELLER])}
        </fieldset>
        <fieldset>
          <legend>Lines</legend>
          {entries(LINES)}
        </fieldset>
        <fieldset>
          <legend>Tail stock</legend>
          <p class="form-choice">
            {STOCKS.map(([name, words]) => (
              <label key={name}>
                <input
                  type="radio"
                  name="tail_stock"
                  value={name}
                  checked={form.value.tail_stock === name}
                  onChange={() => {
                    form.value = { ...form.value, tail_stock: name };
                  }}
                />{' '}
                {words}
              </label>
            ))}
          </p>
        </fieldset>
        <fieldset>
          <legend>Weighed and timed</legend>
          {entries(known(form.value.drive))}
        </fieldset>
        <p class="commands">
          <button type="submit" class="word" aria-disabled={busy.value}>
            Make the design
          </button>
        </p>
      </form>
    </dialog>
  );
}

interface EntryProps {
  readonly entry: Entry;
  readonly form: Signal<FirstDesignForm>;
  readonly problems: readonly FormProblem[];
}

function EntryField({ entry, form, problems }: EntryProps) {
  const problem = problems.find(({ field }) => field === entry.field);
  const id = `first-design-${entry.field}`;
  return (
    <div class="form-entry">
      <label class="form-label" for={id}>
        {entry.label}
      </label>
      <div>
        <input
          id={id}
          class="text-entry"
          name={entry.field}
          autocomplete="off"
          spellcheck={false}
          placeholder={entry.blank && `blank: ${entry.blank}`}
          required={entry.blank === undefined}
          aria-invalid={problem ? true : undefined}
          aria-describedby={`${id}-hint${problem ? ` ${id}-problem` : ''}`}
          value={form.value[entry.name]}
          onInput={(event) => {
            form.value = { ...form.value, [entry.name]: event.currentTarget.value };
          }}
        />
        <p class="aside" id={`${id}-hint`}>
          {unparted(entry.hint)}
        </p>
        {problem && (
          <p class="form-problem" id={`${id}-problem`}>
            {problem.message}
          </p>
        )}
      </div>
    </div>
  );
}
