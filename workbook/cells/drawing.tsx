import { type Arrangement, ScaleDrawing } from '../drawing/index';
import { useSheet } from '../store/context';

/** Plan and side view of the present design, with the baseline as a ghost. */
export function DrawingView({ title, arrangement }: { title: string; arrangement?: Arrangement }) {
  const sheet = useSheet();
  const snapshot = sheet.snapshot.value;
  if (!snapshot) return null;
  return (
    <ScaleDrawing
      shapes={snapshot.drawing}
      ghost={snapshot.ghost}
      names={sheet.names.value}
      values={snapshot.values}
      title={title}
      arrangement={arrangement}
    />
  );
}
