import { functions } from '../formula/index';
import type { Chapter, EntryPiece } from './chapter';
import { formulaSymbols } from './formula-symbols';

/** How numbers and formulas are written, and every function. */
export function formulasChapter(): Chapter {
  return {
    id: 'formulas',
    group: 'Formulas',
    title: 'Numbers and formulas',
    pieces: [
      {
        kind: 'text',
        text: 'A field takes a number, a number with a unit, or a formula. A number alone is read in the unit of its field. In a formula every quantity carries its unit.',
      },
      { kind: 'table', title: 'How to write it', columns: ['written', 'means'], rows: formulaSymbols },
      {
        kind: 'list',
        items: [
          'Dimensions are checked before anything is computed: grams cannot be added to millimetres.',
          'g is always gram. The pull as a multiple of the weight is a plain number: 3.08 × weight.',
          'Angles have dimension one: 1° is 0.01745, and rpm is 2π/60 a second.',
          '°C and °F are points on a scale: they can be typed and compared, not added. For a difference write K.',
          'Both branches of a condition are computed: a fault in either is a fault of the whole.',
          'Names of results have a point: flight.pull. A row of the parts table has two: parts.fuel_tank.mass.',
        ],
      },
      { kind: 'heading', id: 'functions', text: 'Functions' },
      ...functions.map(functionEntry),
    ],
  };
}

const TAKES: Readonly<Record<(typeof functions)[number]['typing'], string>> = {
  plain: 'plain number to plain number',
  same: 'any quantity; gives the same kind',
  alike: 'two or more of one kind; gives the same kind',
  root: 'any quantity; gives its root, with the root of its unit',
  ratio: 'any quantity; gives a plain number',
  angle: 'two of one kind; gives an angle',
};

function functionEntry({ name, aliases, doc, typing, arity }: (typeof functions)[number]): EntryPiece {
  const [least, most] = arity;
  const letters = most === 1 ? 'x' : most === 2 && least === 2 ? 'x, y' : 'x, y, …';
  return {
    kind: 'entry',
    id: `function.${name}`,
    symbol: '',
    title: doc,
    name: `${name}(${letters})`,
    doc: '',
    facts: [TAKES[typing], ...(aliases.length > 0 ? [`also written ${aliases.join(', ')}`] : [])],
    notes: [],
  };
}
