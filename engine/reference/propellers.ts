import { bladeShapes, propellerAgreement } from '../library/index';
import { formatQuantity } from '../units/index';
import type { Chapter } from './chapter';

const stations = bladeShapes[0]!.radiusShare.map((share) => formatQuantity(share, '%'));
const along = (values: readonly number[], digits: number): string[] => values.map((value) => value.toFixed(digits));

export const bladeShapesChapter = (): Chapter => ({
  id: 'blade-shapes',
  group: 'Data',
  title: 'Blade shapes',
  pieces: [
    {
      kind: 'text',
      text: 'Outlines of propeller blades, free of size, at shares of the tip radius: chord over tip radius, and local pitch over the marked pitch. Pick the one that looks like yours.',
    },
    {
      kind: 'table',
      title: 'Chord over tip radius',
      columns: ['blade', ...stations],
      rows: bladeShapes.map((row) => [row.title, ...along(row.chordShare, 3)]),
    },
    {
      kind: 'table',
      title: 'Local pitch over marked pitch',
      columns: ['blade', ...stations],
      rows: bladeShapes.map((row) => [row.title, ...along(row.pitchShare, 2)]),
    },
    { kind: 'list', items: bladeShapes.map((row) => `${row.title}: ${row.source}.`) },
  ],
});

/** What blade elements reach on the measured sets, good or bad. */
export const propellerAgreementChapter = (): Chapter => ({
  id: 'propeller-agreement',
  group: 'Data',
  title: 'Computed and measured propellers',
  pieces: [
    {
      kind: 'text',
      text: 'Errors of the propeller model, computed over measured less one, in a wind tunnel (J. B. Brandt and others, UIUC Propeller Database): at shares of the advance ratio of best measured efficiency, and at rest at the slowest and fastest rpm measured. One section stands for all propellers and nothing is fitted to a single one; the zero-lift angle of real blades lies up to 3° beside it, and an error of 1° is some 10 % of thrust. The last two, whose blades were not measured, took no part in fitting the section. Marked sizes in inches. A tachometer on your own engine is worth more than this model: the engine by tachometer holds what was read.',
    },
    {
      kind: 'table',
      title: 'Errors of thrust and power coefficient',
      columns: Object.keys(propellerAgreement[0]!),
      rows: propellerAgreement.map((row) => Object.values(row)),
    },
  ],
});
