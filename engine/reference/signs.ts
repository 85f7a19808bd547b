import type { Chapter } from './chapter';
import { flightSymbols } from './flight-symbols';

/** Axes, signs and marks: what everything else on the page takes for granted. */
export const signsChapter: Chapter = {
  id: 'signs',
  group: 'Reading this',
  title: 'Axes, signs and marks',
  pieces: [
    {
      kind: 'text',
      text: 'Lengths on the model run from the leading edge of the wing root: x aft, y outboard (away from the pilot), z up. What stands ahead of the leading edge or inboard of the centreline has a negative number.',
    },
    {
      kind: 'table',
      title: 'Signs',
      columns: ['quantity', 'symbol', 'positive'],
      rows: [
        ['Nose angle', 'ψ', 'nose points away from the pilot'],
        ['Outboard wing', 'δ', 'outboard wing hangs lower than the inboard one, seen along the lines'],
        ['Pitch', 'θ', 'reference line points above the path'],
        ['Line trail', 'ε', 'lines lie behind the radius through the guide'],
        ['Line sag', 'σ', 'lines leave the guide downward'],
        ['Engine offset', 'τ', 'shaft points away from the pilot'],
        ['Down thrust', 'η', 'shaft points down'],
        ['Rudder', 'δ_r', 'trailing edge outboard'],
        ['Elevator', 'δ_e', 'trailing edge up'],
        ['Guide from CG', 'Δ', 'guide aft of the CG'],
      ],
    },
    {
      kind: 'text',
      text: 'Lateral signs are outboard positive, so nothing but the torque and the turning of the propeller depends on the direction of flight.',
    },
    flightSymbols,
    {
      kind: 'list',
      items: [
        '“Common practice, no source”: a fact of the trade that nobody has published, as far as is known here.',
        '“From memory”: recalled, not looked up. Open the source before you rest anything on the last digit.',
        '“A guess without a source”: better than nothing, and the first number to replace by a measured one.',
        '“Derivation”: follows from the laws named; nothing published is needed.',
      ],
    },
    {
      kind: 'text',
      text: 'Every estimate starts from what a ruler, a postal scale, a stopwatch and a spring scale give. A value that is typed stands in its place.',
    },
  ],
};
