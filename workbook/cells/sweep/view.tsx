import type { Axis, NameInfo, SweepCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { Remade } from '../shared/remade';
import { SetUp } from '../shared/set-up';
import { SweepProgressLine } from '../shared/sweep-progress';
import { SweepForm } from './form';

/** What is swept, what is asked for, and how far it has come. */
export function SweepView({ cell }: { cell: SweepCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.sweeps.watch(cell.name));
  const titles = cell.wanted.map((path) => sheet.name(path)?.title ?? path);
  return (
    <div class="sweep" ref={watched}>
      <ul class="sweep-axes">
        {cell.axes.map((axis) => (
          <li key={axis.of}>{axisWords(axis, sheet.name(axis.of))}</li>
        ))}
      </ul>
      <p>Asked for: {titles.length === 0 ? 'nothing yet' : titles.join(', ')}.</p>
      <Remade of={cell.axes.map(({ of }) => of)} />
      <SweepProgressLine cell={cell} />
      <SetUp title="Set up this trial series" open={sheet.faultAt(cell.name) !== undefined}>
        <SweepForm cell={cell} />
      </SetUp>
    </div>
  );
}

/** What one axis runs over, in words. */
function axisWords(axis: Axis, info: NameInfo | undefined): string {
  const title = info?.title ?? axis.of;
  if (info?.options) return `${title}: ${axis.options ? axis.options.join(', ') : 'every option'}`;
  const range = axis.low === '' && axis.high === '' ? 'along its slide' : `${axis.low} to ${axis.high}`;
  return `${title}: ${axis.count} values, ${range}`;
}
