import { air } from '../air/index';
import type { Field } from '../block';
import { flightResults } from '../flight/results';
import { linesResults } from '../lines/results';
import { NEWTONS, SHARE } from '../measures';

export const lineShapeLinks = {
  air: { link: 'air', results: air.results, doc: 'The air that drags on the lines.' },
  lines: { link: 'lines', results: linesResults, doc: 'The lines.' },
  flight: { link: 'flight', results: flightResults, doc: 'The level flight that the lines are drawn out by.' },
} as const;

export const lineShapeFields = {
  difference_share: {
    ...SHARE,
    symbol: 'k_Δ',
    title: 'Difference of pull over pull',
    doc: 'What the elevator asks of the lines: pull of the harder pulled line less that of the other, over the pull of all lines.',
    default: 0.1,
    range: [0, 1],
    basis: 'An elevator of this size held well over at speed asks for about a tenth: a guess without a source.',
  } as Field,
  difference: {
    ...NEWTONS,
    symbol: 'ΔT',
    title: 'Difference of pull',
    doc: 'Pull of the harder pulled line less that of the other, at the model, where it is known; the control linkage tells it as control.line_difference.',
    default: Number.NaN,
    range: [0, 500],
    basis: 'Difference of pull over pull × line pull in level flight; none with a single line.',
  } as Field,
  rest_pull: {
    ...NEWTONS,
    symbol: 'T_0',
    title: 'Pull on the ground',
    doc: 'Of all lines, drawn out level with the model held, for the sag at rest.',
    default: Number.NaN,
    range: [0.1, 500],
    basis: 'Line pull in level flight.',
    advanced: true,
  } as Field,
} as const;
