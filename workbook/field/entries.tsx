import {
  type DayCard,
  type DayForm,
  formatQuantity,
  fromSI,
  GROUNDS,
  readEntry,
  shownUnit,
  toSI,
  type UnitSet,
} from '../../engine/index';
import { CompassRing } from './compass';
import { Stepper } from './stepper';
import { GROUND_WORDS } from './words';

type Whole = DayCard['form'];

/** Steps in the unit that is shown. */
const STEPS = {
  temperature: { title: 'Temperature', unit: '°C', metric: 1, inch_pound: 2, low: -30, high: 50 },
  elevation: { title: 'Elevation', unit: 'm', metric: 50, inch_pound: 100, low: -400, high: 4000 },
  pressure: { title: 'Pressure', unit: 'hPa', metric: 1, inch_pound: 1, low: 600, high: 1080 },
  wind: { title: 'Wind', unit: 'm/s', metric: 0.5, inch_pound: 1, low: 0, high: 20 },
  gusts: { title: 'Gusts', unit: 'm/s', metric: 0.5, inch_pound: 1, low: 0, high: 25 },
} as const;
type Stepped = keyof typeof STEPS;
/** Where pressure begins when it is said first. */
const STANDARD = 101_325;

/** The day by thumb: large steps, a ring for bearings, the ground, and what is on hand. */
export function DayEntries(props: {
  form: DayForm;
  whole: Whole;
  now: DayCard['now'];
  units: UnitSet;
  onChange(form: DayForm): void;
}) {
  const { form, whole, now, units, onChange } = props;
  const change = (to: Partial<DayForm>): void => onChange({ ...form, ...to });
  const unitOf = (name: Stepped): string => (name === 'pressure' ? 'hPa' : shownUnit(STEPS[name].unit, units));
  const stepper = (name: Stepped, si: number) => (
    <Stepper
      key={name}
      title={STEPS[name].title}
      shown={formatQuantity(si, unitOf(name), { significant: name === 'pressure' ? 4 : 3 })}
      onStep={(way) => change({ [name]: stepped(name, si, way, unitOf(name), units) })}
    />
  );
  return (
    <div class="field-entries">
      {stepper('wind', whole.wind)}
      {stepper('gusts', whole.gusts)}
      <CompassRing title="Wind from" bearing={whole.from} onPick={(from) => change({ from })} />
      {stepper('temperature', whole.temperature)}
      {form.pressure === undefined ? stepper('elevation', whole.elevation) : stepper('pressure', form.pressure)}
      <button
        type="button"
        class="word"
        onClick={() => {
          const { pressure, ...rest } = form;
          onChange(pressure === undefined ? { ...form, pressure: STANDARD } : rest);
        }}
      >
        {form.pressure === undefined ? 'By pressure at the field' : 'By elevation'}
      </button>
      <fieldset class="field-ground">
        <legend>Ground</legend>
        {GROUNDS.map((ground) => (
          <label key={ground} class={ground === whole.ground ? 'picked' : ''}>
            <input type="radio" name="ground" checked={ground === whole.ground} onChange={() => change({ ground })} />
            {GROUND_WORDS[ground]}
          </label>
        ))}
      </fieldset>
      <CompassRing title="Pit" bearing={whole.pit} onPick={(pit) => change({ pit })} />
      {!Number.isNaN(now.tip) && (
        <OnHand
          title="Tip weights on hand"
          unit={shownUnit('g', units)}
          list={form.tips}
          now={now.tip}
          onTake={(tips) => change({ tips })}
        />
      )}
      {!Number.isNaN(now.guide) && (
        <OnHand
          title="Leadout holes there are"
          unit={shownUnit('mm', units)}
          list={form.guides}
          now={now.guide}
          onTake={(guides) => change({ guides })}
        />
      )}
    </div>
  );
}

/** The next number of whole steps; it stays within what is flown in. */
function stepped(name: Stepped, si: number, way: 1 | -1, unit: string, units: UnitSet): number {
  const { low, high, unit: own } = STEPS[name];
  const step = STEPS[name][units];
  const next = (Math.round(fromSI(si, unit) / step) + way) * step;
  return Math.min(toSI(high, own), Math.max(toSI(low, own), toSI(next, unit)));
}

/** A short list of sizes, typed with a space between; blank: some about what the model has. */
function OnHand(props: {
  title: string;
  unit: string;
  list: readonly number[] | undefined;
  now: number;
  onTake(list: readonly number[] | undefined): void;
}) {
  const { title, unit, list, now, onTake } = props;
  const bare = (si: number): string => String(Number(fromSI(si, unit).toPrecision(4)));
  return (
    <label class="field-hand">
      <span>
        {title}, {unit}
      </span>
      <input
        type="text"
        inputmode="text"
        value={list?.map(bare).join(' ') ?? ''}
        placeholder={`now ${bare(now)}, and near it`}
        onChange={({ currentTarget }) => {
          const texts = currentTarget.value.split(/[\s;]+/).filter((text) => text !== '');
          const read = texts.map((text) => readEntry(text.replace(/^([+-]?\d+),(\d+)$/, '$1.$2'), unit));
          if (texts.length === 0) onTake(undefined);
          else if (read.every((each) => each.ok)) onTake(read.map((each) => (each.ok ? each.si : 0)));
          else currentTarget.value = list?.map(bare).join(' ') ?? '';
        }}
      />
    </label>
  );
}
