import type { Document } from '../../../../engine/sheet/document';
import { firstDesign } from '../../../../engine/study/first-design/index';
import type { FirstDesignForm } from '../../../../engine/study/first-design/told';

const form = (more: Partial<FirstDesignForm>): FirstDesignForm => ({
  ...{
    title: 'Begun',
    drive: 'engine',
    span: '1 m',
    chord: '',
    size: '4 cm³',
    line_length: '',
    weight: '',
    propeller: '',
    line_diameter: '',
    line_count: '',
    lap_time: '',
    tail_stock: 'balsa',
  },
  ...more,
});

/** Forms from 0.15 kg to 4 kg, racer to trainer, engine and motor. */
export const forms: readonly FirstDesignForm[] = [
  form({}),
  form({ span: '0.6 m', drive: 'motor', size: '80 W' }),
  form({ span: '0.5 m', size: '0.8 cm³' }),
  form({ span: '1.4 m', size: '7.5 cm³', weight: '1600 g', lap_time: '5.2 s' }),
  form({ span: '49 in', size: '0.35 in³', line_length: '60 ft' }),
  form({ span: '1.8 m', size: '13 cm³', weight: '3500 g' }),
  form({ span: '0.9 m', drive: 'motor', size: '350 W', weight: '800 g', lap_time: '5 s' }),
  form({ span: '0.75 m', size: '1.5 cm³', lap_time: '4.4 s' }),
  form({ span: '0.45 m', drive: 'motor', size: '40 W', weight: '150 g' }),
  form({ span: '1.1 m', chord: '260 mm', size: '6 cm³', line_length: '18 m' }),
  form({ span: '1.25 m', drive: 'motor', size: '600 W', weight: '1500 g' }),
  form({ span: '1.02 m', size: '2.5 cm³', weight: '480 g', line_length: '15.92 m', lap_time: '2.6 s' }),
  form({ span: '0.7 m', size: '2.5 cm³', line_length: '15.9 m' }),
  form({ span: '1 m', size: '4 cm³', weight: '800 g' }),
  form({ span: '1.3 m', size: '6.5 cm³', lap_time: '5.4 s' }),
  form({ span: '0.55 m', drive: 'motor', size: '100 W', lap_time: '4.5 s' }),
  form({ span: '1.6 m', size: '10 cm³', line_length: '21 m' }),
  form({ span: '0.95 m', size: '3.2 cm³', weight: '700 g' }),
  form({ span: '1.05 m', drive: 'motor', size: '450 W' }),
  form({ span: '0.8 m', size: '1.6 cm³', weight: '450 g' }),
  form({ span: '1.15 m', size: '5 cm³', chord: '240 mm', weight: '1100 g' }),
  form({ span: '0.65 m', size: '1 cm³', line_length: '12 m' }),
  form({ span: '1.45 m', drive: 'motor', size: '800 W', weight: '2000 g' }),
  form({ span: '0.6 m', size: '0.8 cm³', weight: '250 g' }),
];

/** The design that is begun with a form. */
export function begun(of: FirstDesignForm): Document {
  const made = firstDesign(of);
  if (!made.ok) throw new Error(made.problems.map((problem) => problem.message).join(' '));
  return made.document;
}
