import { serialise } from '../../../../engine/sheet/file';
import { firstDesign } from '../../../../engine/study/first-design/index';
import type { FirstDesignForm } from '../../../../engine/study/first-design/told';

const FORM: FirstDesignForm = {
  title: 'Barn owl',
  drive: 'engine',
  span: '1 m',
  chord: '',
  size: '4.1 cm³',
  line_length: '',
  weight: '',
  propeller: '',
  line_diameter: '',
  line_count: '',
  lap_time: '',
  tail_stock: 'balsa',
};

/** A design as it is begun from the form. */
export function begun(form: Partial<FirstDesignForm> = {}) {
  const answer = firstDesign({ ...FORM, ...form });
  if (!answer.ok) throw new Error(answer.problems.map(({ message }) => message).join(' '));
  return answer.document;
}

export const begunText = (form: Partial<FirstDesignForm> = {}): string => serialise(begun(form));
