import type { SweepCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { Wanted } from '../shared/wanted';
import { AxesForm } from './axes-form';

/** What is swept, from where to where in how many values, and which results are asked for. */
export function SweepForm({ cell }: { cell: SweepCell }) {
  const sheet = useSheet();
  const change = (to: Partial<SweepCell>): void => sheet.changeCell({ ...cell, ...to });
  return (
    <>
      <AxesForm cell={cell} onChange={(axes) => change({ axes })} />
      <Wanted id={cell.id} wanted={cell.wanted} sheet={sheet} onChange={(wanted) => change({ wanted })} />
    </>
  );
}
