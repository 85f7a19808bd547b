import { DrawingView, standingDrawing } from '../../cells/index';
import { useSheet } from '../../store/context';
import { CheckList } from '../standing/check-list';
import { KeyFigures } from '../standing/key-figures';
import { Stops } from '../standing/stops';

/** What stands beside every sheet on the screen stands before the first one on paper. */
export function StandingOnPaper() {
  const drawing = standingDrawing(useSheet().cells.value);
  return (
    <div class="standing-on-paper">
      <Stops />
      {drawing && (
        <div class="paper-drawing">
          <DrawingView cell={drawing} />
        </div>
      )}
      <KeyFigures />
      <CheckList />
    </div>
  );
}
