import type { ChoiceCell, Layer } from '../../sheet/document';
import type { TailStock } from './told';

const glue = (name: string): Layer => ({ name, material: '', text: '50 g/m²' });
const face = (name: string): Layer => ({ name, material: 'birch_ply', text: '0.4 mm' });

/** Stock for stabiliser and elevator, as thick as it is usual for the depth of the tail (common practice, no source). */
export const tailStock = (picked: TailStock): ChoiceCell => ({
  kind: 'choice',
  id: 'c28',
  name: 'tail_stock',
  title: 'Tail stock',
  of: 'stack',
  columns: [],
  options: [
    {
      name: 'balsa',
      title: 'balsa',
      pattern: 'grain',
      layers: [{ name: 'sheet', material: 'balsa_medium', text: '0.055 × tail_chord' }],
    },
    {
      name: 'balsa_ply',
      title: 'balsa with ply faces',
      pattern: 'faced',
      layers: [
        face('face_top'),
        glue('glue_top'),
        { name: 'core', material: 'balsa_light', text: '0.035 × tail_chord' },
        glue('glue_bottom'),
        face('face_bottom'),
      ],
    },
    {
      name: 'light_ply',
      title: 'light ply',
      pattern: 'ply',
      layers: [{ name: 'sheet', material: 'light_ply', text: '0.033 × tail_chord' }],
    },
  ],
  text: picked,
});
