import { useContext } from 'preact/hooks';
import { SaveFigure } from '../../controls/save-figure';
import { type Arrangement, type Place, ScaleDrawing } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { FigureWidth } from '../../store/figures';
import { printing } from '../../store/printing';
import { placeTexts } from '../parts/place';

/** Plan and side view of the present design, with the baseline as a ghost; and where a part is placed by a press. */
export function DrawingView({ title, arrangement }: { title: string; arrangement?: Arrangement }) {
  const sheet = useSheet();
  const snapshot = sheet.snapshot.value;
  const picking = sheet.picking.value;
  const inFigure = useContext(FigureWidth) !== undefined;
  if (!snapshot) return null;
  const pick = (place: Place, metresPerPixel: number): void => {
    if (!picking) return;
    sheet.picking.value = undefined;
    sheet.setTexts(placeTexts(picking.path, place, metresPerPixel, sheet.units()), `place of ${picking.title}`);
  };
  const at = (axis: string): number => sheet.value(`${picking?.path}.${axis}`);
  return (
    <>
      <ScaleDrawing
        shapes={snapshot.drawing}
        ghost={snapshot.ghost}
        names={sheet.names.value}
        values={snapshot.values}
        title={title}
        arrangement={printing.value || inFigure ? 'paper' : arrangement}
        spot={picking && { x: at('x'), y: at('y'), z: at('z') }}
        onPick={picking && pick}
      />
      {arrangement !== 'strip' && <SaveFigure title={title} draw={() => <DrawingView title={title} />} />}
    </>
  );
}
