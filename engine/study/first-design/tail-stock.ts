import type { ChoiceCell, ChoiceOption, Layer } from '../../sheet/document';
import type { TailStock } from './told';

const glue = (name: string): Layer => ({ name, material: '', text: '50 g/m²' });
const face = (name: string): Layer => ({ name, material: 'birch_ply', text: '0.4 mm' });

/** A balsa core of this thickness between thin faces of ply. */
export const facedStock = (core: string): ChoiceOption => ({
  name: 'balsa_ply',
  title: 'balsa with ply faces',
  pattern: 'faced',
  layers: [
    face('face_top'),
    glue('glue_top'),
    { name: 'core', material: 'balsa_light', text: core },
    glue('glue_bottom'),
    face('face_bottom'),
  ],
});

export const plyStock = (thickness: string): ChoiceOption => ({
  name: 'light_ply',
  title: 'light ply',
  pattern: 'ply',
  layers: [{ name: 'sheet', material: 'light_ply', text: thickness }],
});

export const balsaStock = (thickness: string): ChoiceOption => ({
  name: 'balsa',
  title: 'balsa',
  pattern: 'grain',
  layers: [{ name: 'sheet', material: 'balsa_medium', text: thickness }],
});

/** How thick each stock usually is, as a share of the depth of the tail (common practice, no source). */
export const USUAL = { balsa: 0.055, core: 0.035, ply: 0.033 } as const;

/** Stock for stabiliser and elevator, as thick as it is usual for the depth of the tail. */
export const tailStock = (picked: TailStock): ChoiceCell => ({
  kind: 'choice',
  id: 'c28',
  name: 'tail_stock',
  title: 'Tail stock',
  of: 'stack',
  columns: [],
  options: [
    balsaStock(`${USUAL.balsa} × tail_chord`),
    facedStock(`${USUAL.core} × tail_chord`),
    plyStock(`${USUAL.ply} × tail_chord`),
  ],
  text: picked,
});
