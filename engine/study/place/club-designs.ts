import type { Cell, Document } from '../../sheet/document';
import { serialise } from '../../sheet/file';
import { freeIds } from '../../sheet/free-names';
import { openLive } from '../../sheet/live';
import { putText } from '../../sheet/paths';
import { freeSheetId } from '../../sheet/sheets';
import { firstDesign } from '../first-design/index';
import type { FirstDesignForm } from '../first-design/told';
import { library } from '../library';
import { placeStudy, studies } from './index';

/** A design of the invented club: begun with a form, with a few words, and with some of the studies placed on it. */
interface ClubDesign {
  readonly file: string;
  readonly form: FirstDesignForm;
  readonly words: string;
  readonly studies: readonly string[];
  /** What it has of its own beside what is begun and placed. */
  own?(document: Document): Document;
}

const blank: FirstDesignForm = {
  ...{ title: '', drive: 'engine', span: '', chord: '', size: '', propeller: '', line_length: '', line_diameter: '' },
  ...{ line_count: '', weight: '', lap_time: '', tail_stock: 'balsa' },
};

const CLUB: readonly ClubDesign[] = [
  {
    file: 'hob.tetherwright.json',
    form: {
      ...blank,
      ...{ title: 'Hob', drive: 'motor', span: '0.6 m', size: '60 W', line_length: '12 m', weight: '260 g' },
      lap_time: '4.8 s',
    },
    words:
      'The Hob is an invented electric trainer of the invented Saltmarsh Lane club, for a first summer on short lines: {parts.mass} ready to fly, a lap in {flight.lap_time}, {flight.pull} on the lines. No such model, maker or club exists; its numbers are made up to try things on.',
    studies: [
      'leadouts_study',
      'which_lines',
      'wind_study',
      'gear_study',
      'weighing_study',
      'pull_test_study',
      'controls_study',
    ],
  },
  {
    file: 'trivet-46.tetherwright.json',
    form: {
      ...blank,
      ...{ title: 'Trivet 46', span: '1.4 m', size: '7.5 cm³', line_length: '19.5 m', weight: '1550 g' },
      ...{ lap_time: '5.2 s', line_diameter: '0.46 mm' },
    },
    words:
      'The Trivet 46 is an invented stunt model of the invented Saltmarsh Lane club: {parts.mass} with its fuel, a lap in {flight.lap_time}, {flight.pull} on the lines in level flight. What the lines do higher up stands on the sheet “Overhead”. No such model, maker or club exists; its numbers are made up to try things on.',
    studies: [
      'engine_and_tail',
      'tip_weight_study',
      'leadouts_study',
      'wind_study',
      'tank_study',
      'pull_test_study',
      'controls_study',
    ],
    own: withOverhead,
  },
];

/** The file of each, by its name. */
export function clubDesigns(): readonly { readonly file: string; readonly text: string }[] {
  return CLUB.map((design) => ({ file: design.file, text: serialise(madeOf(design)) }));
}

function madeOf({ form, words, studies: wanted, own = (document) => document }: ClubDesign): Document {
  const begun = firstDesign(form);
  if (!begun.ok) throw new Error(begun.problems.map(({ message }) => message).join(' '));
  const head = { drawn: 'Saltmarsh Lane club (invented)', date: '2026-11-28', invented: true } as const;
  const bare = own(withWords({ ...begun.document, ...head }, form.title, words));
  return wanted.reduce((now, name) => {
    const study = studies().find((each) => each.name === name)!;
    const answer = placeStudy(study, openLive(now, library), library);
    if (!answer.ok) throw new Error(`${study.question} ${answer.message}`);
    return answer.document;
  }, bare);
}

/** What it is stands first on the first sheet. */
function withWords(document: Document, title: string, text: string): Document {
  const note: Cell = { kind: 'note', id: freeIds(document)(), name: 'about', title: `The ${title}`, text };
  const [first, ...rest] = document.sheets;
  return { ...document, sheets: [{ ...first!, pieces: [note, ...first!.pieces] }, ...rest] };
}

/** A sheet on which the model flies its laps from level to 60° up, and what it takes straight overhead. */
function withOverhead(document: Document): Document {
  const ids = freeIds(document);
  const pieces: readonly Cell[] = [
    {
      ...{ kind: 'note', id: ids(), name: 'overhead_note', title: 'Higher up the lines pull less' },
      text: 'In a lap at {elevation} above the pilot the lines pull {flight.pull}, {flight.pull_per_weight}, and the model flies {flight.speed}. The higher the lap, the more its own weight draws it toward the pilot, and the slower it flies. Straight overhead its speed alone keeps the lines tight: under {least_overhead} they go slack, where m v²/r is no more than the weight. These are steady laps in calm air: loops, wind and the whip of a hand are not computed. Stop if there is lightning about, and fly figures only as the rule book of your class and club practice allow.',
    },
    {
      ...{ kind: 'variables', id: ids(), name: 'how_high', title: 'How high' },
      rows: [
        {
          name: 'elevation',
          title: 'elevation',
          symbol: 'ε',
          unit: '°',
          text: '4°',
          low: '0°',
          high: '60°',
          step: '1°',
        },
      ],
    },
    {
      ...{ kind: 'chart', id: ids(), name: 'overhead_chart', title: 'Pull and speed against elevation', chart: 'line' },
      ...{ series: 'overhead_series', across: 'elevation', up: ['flight.pull', 'flight.speed'], lines: '' },
    },
    {
      ...{ kind: 'formula', id: ids(), name: 'overhead_sums', title: 'Straight overhead' },
      lines: [
        { name: 'least_overhead', text: 'sqrt(flight.gravity × flight.radius)', unit: 'm/s' },
        { name: 'speed_over_least', text: 'flight.speed ÷ least_overhead', unit: '' },
      ],
    },
    {
      ...{ kind: 'check', id: ids(), name: 'overhead_check', title: 'Fast enough to fly overhead' },
      ...{ of: 'speed_over_least', low: '1.2', high: '', above: '' },
      below: 'the lines may go slack overhead: more power, or shorter lines',
    },
    {
      ...{ kind: 'trial_series', id: ids(), name: 'overhead_series', title: 'Elevation', folded: true },
      axes: [{ of: 'elevation', low: '', high: '', count: 13 }],
      wanted: ['flight.pull', 'flight.speed'],
    },
  ];
  const sheet = { id: freeSheetId(document), title: 'Overhead', pieces };
  const grown = { ...document, sheets: [...document.sheets, sheet] };
  return putText(
    grown,
    'flight.height',
    'flight.handle_height + (lines.guide_radius - leadouts.guide_y) × sin(elevation)',
  )!;
}
