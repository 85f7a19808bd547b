import { keptText } from '../../formula/index';
import { type Document, FORMAT, VERSION } from '../../sheet/document';
import { faultsOfLive, type Live, numberAt, openLive, openQuick, quick, setLive } from '../../sheet/live';
import { fromSI, inUnitsOf, type UnitSet, unparted } from '../../units/index';
import { library } from '../library';
import { sentenceOf } from '../run/cause';
import { cellsOf, type Known, type Trim } from './cells';
import { asked, inTradeUnits, propellerProblem, readEntry } from './form';
import { inInchPound } from './inch-pound';
import { flownAgain, knownOf } from './known';
import { misfitsOf, type Sizes, WATTS } from './misfits';
import { sheetsOf } from './sheets';
import { ballastSlide, guideSlide, type Slide } from './slides';
import { STORE_LENGTH, storeLength } from './store';
import type { FirstDesignAnswer, FirstDesignForm, FormField, FormProblem } from './told';
import { trim, typedIn } from './trim';

type Numbers = Readonly<Partial<Record<FormField, number>>>;

/** A sensible first design of a model of which little is known, trimmed so that it balances and flies; or what is wrong with the entries. */
export function firstDesign(form: FirstDesignForm): FirstDesignAnswer {
  const read = readForm(form);
  if (!read.ok) return read;
  const sizes = sizesOf(form, read.numbers);
  const problems = misfitsOf(sizes, form.drive, setOf(form));
  if (problems.length > 0) return { ok: false, problems };
  return make(completed(form, sizes), sizes.chord);
}

function readForm(form: FirstDesignForm): { ok: true; numbers: Numbers } | { ok: false; problems: FormProblem[] } {
  const size = sizeField(form);
  const entries: readonly (readonly [keyof typeof asked, string])[] = [
    ['span', form.span],
    ['chord', form.chord],
    [size, form.size],
    ['line_length', form.line_length],
    ['line_diameter', form.line_diameter],
    ['line_count', form.line_count],
    ['weight', form.weight],
    ['lap_time', form.lap_time],
  ];
  const numbers: Partial<Record<FormField, number>> = {};
  const propeller = propellerProblem(form.propeller);
  const problems: FormProblem[] = propeller ? [propeller] : [];
  for (const [field, text] of entries) {
    const entry = readEntry(field, text, setOf(form));
    if (!entry.ok) problems.push({ field, message: entry.message });
    else if (entry.si !== undefined) numbers[field] = entry.si;
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, numbers };
}

const sizeField = (form: FirstDesignForm): 'displacement' | 'motor_power' =>
  form.drive === 'engine' ? 'displacement' : 'motor_power';

/** What was not typed is taken by rules of thumb (common practice, no source). */
function sizesOf(form: FirstDesignForm, numbers: Numbers): Sizes {
  const span = numbers.span!;
  const displacement = form.drive === 'engine' ? numbers.displacement! : (numbers.motor_power! / WATTS) * 1e-6;
  const usual = 18.3 * (displacement / 4.1e-6) ** 0.3;
  return {
    span,
    chord: numbers.chord ?? span / 5,
    displacement,
    lineLength: numbers.line_length ?? Math.min(Math.max(usual, 9 * span, 8), 21, 35 * span),
    lapTime: numbers.lap_time,
  };
}

/** The form with every entry as a text with its unit, as it will stand in the sheet. */
function completed(form: FirstDesignForm, sizes: Sizes): FirstDesignForm {
  const set = setOf(form);
  const withUnit = (field: keyof typeof asked, text: string): string => keptText(text.trim(), asked[field].unit, '');
  return {
    ...form,
    title: form.title.trim() || 'First design',
    span: withUnit('span', form.span),
    chord: withUnit('chord', form.chord) || typedIn[set].station(sizes.chord),
    size: withUnit(sizeField(form), form.size),
    line_length:
      withUnit('line_length', form.line_length) ||
      (set === 'metric' ? `${sizes.lineLength.toFixed(1)} m` : `${Math.round(fromSI(sizes.lineLength, 'ft'))} ft`),
    line_diameter: withUnit('line_diameter', form.line_diameter),
    line_count: form.line_count.trim(),
    propeller: form.propeller.trim(),
    weight: withUnit('weight', form.weight),
    lap_time: withUnit('lap_time', form.lap_time),
  };
}

/** A design is begun in the units in which its span was typed. */
const setOf = (form: FirstDesignForm): UnitSet => (inTradeUnits('span', form.span) ? 'inch_pound' : 'metric');

const typedTexts = (form: FirstDesignForm): ReadonlySet<string> =>
  new Set([
    form.span,
    form.chord,
    form.size,
    form.line_length,
    form.line_diameter,
    form.weight,
    form.lap_time,
    form.propeller,
  ]);

function documentOf(form: FirstDesignForm, start: Trim, known: Known): Document {
  const set = setOf(form);
  const cells = cellsOf(form, start, known, set);
  return {
    format: FORMAT,
    version: VERSION,
    title: form.title,
    drawn: '',
    date: '',
    units: set,
    sheets: sheetsOf(set === 'metric' ? cells : inInchPound(cells, typedTexts(form))),
    rows: [],
    figures: [
      'parts.mass',
      'balance.cg_x',
      'balance.static_margin',
      'flight.pull',
      'flight.pull_per_weight',
      'flight.speed',
      'flight.lap_time',
      'flight.nose_out',
      'flight.outboard_low',
      'flight.test_margin',
      'flight.breaking_margin',
    ],
  };
}

/** Rounds of trimming a model that was timed, and then of finding the drag with which its lap is flown again. */
const [TRIMS, DRAGS] = [2, 5];

function make(form: FirstDesignForm, chord: number): FirstDesignAnswer {
  const set = setOf(form);
  const { station, weight } = typedIn[set];
  const start: Trim = {
    engine_station: station(-0.7 * chord),
    tip_weight: weight(0.01),
    nose_weight: weight(0),
    tail_weight: weight(0),
    guide_x: station(0.33 * chord),
  };
  const first = documentOf(form, start, {});
  const light = form.weight === '' ? undefined : tooLight(form, openQuick(first, library));
  if (light) return { ok: false, problems: [light] };
  let { live, trim: found } = trim(first, chord);
  const store = storeLength(live);
  // A shorter tank is thicker and stands further outboard.
  if (store < STORE_LENGTH.usual) ({ live, trim: found } = trim(documentOf(form, found, { store }), chord));
  if (form.lap_time !== '') {
    // What the model weighed when it was timed is known when it is trimmed, and how it is trimmed hangs a little on its power.
    const timed = { ...form, weight: '' };
    const knownNow = (): Known => ({ ...knownOf(timed, live), store });
    for (let k = 0; k < TRIMS; k++) ({ live, trim: found } = trim(documentOf(form, found, knownNow()), chord));
    for (let k = 0; k < DRAGS && !flownAgain(form, live); k++) {
      live = openQuick(documentOf(form, found, knownNow()), library);
    }
  }
  const guide = guideSlide(numberAt(live, 'guide_x'), chord, set);
  const ballast = ballastOf(live, chord, set);
  live = openLive(documentOf(form, found, { ...knownOf(form, live), guide, ballast, store }), library);
  const fault = faultsOfLive(live).find(({ state }) => state === 'fault');
  if (fault) {
    const message = `No design that flies was found for these entries: ${sentenceOf(fault)} Look at span, engine, line length and weight.`;
    return { ok: false, problems: [{ field: sizeField(form), message }] };
  }
  return { ok: true, document: live.compiled.document };
}

/** Slides of nose and tail weight that reach what is advised wherever the engine stands. */
function ballastOf(live: Live, chord: number, set: UnitSet): NonNullable<Known['ballast']> {
  const copy = openQuick(live.compiled.document, library);
  const needed = (weight: 'nose_weight' | 'tail_weight', station: number): Slide => {
    const texts = [['engine_station', typedIn[set].station(station * chord)]] as const;
    const moved = setLive(copy, texts, library, quick(copy.compiled.program)).live;
    const advised = numberAt(moved, weight) + numberAt(moved, `ballast.${weight}`);
    return ballastSlide(Number.isFinite(advised) ? advised : 0, set);
  };
  return { nose: needed('nose_weight', -0.4), tail: needed('tail_weight', -1.4) };
}

/** Mass per wing area below which no wing, fuselage and tail are built, kg/m² (common practice, no source). */
const LIGHTEST = 0.5;

/** A weight that was typed leaves too little for the airframe. */
function tooLight(form: FirstDesignForm, live: Live): FormProblem | undefined {
  const airframe = numberAt(live, 'airframe_mass');
  const least = LIGHTEST * numberAt(live, 'wing_area');
  if (airframe >= least) return undefined;
  const entry = readEntry('weight', form.weight);
  const others = (entry.ok ? (entry.si ?? 0) : 0) - airframe;
  const said = (kilograms: number): string => inUnitsOf(`${Math.round(kilograms * 1000)} g`, setOf(form), 3);
  return {
    field: 'weight',
    message: unparted(
      `Weight: ${form.weight} is too little for an engine or motor of that size with tail, gear and fittings, some ${said(others)}, and ${said(least)} or more of wing, fuselage and fin. Look at weight and size, or leave the weight blank for an estimate.`,
    ),
  };
}
