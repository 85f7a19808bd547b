import { goAlong } from '../../controls/along';
import { BaselineCommands } from './baseline-commands';
import { BaselineList } from './baseline-list';
import { CheckList } from './check-list';
import { FigureChoice } from './figure-choice';

/** Checks that hold, the baseline, and which figures stand here. */
export function StandingFigures() {
  return (
    <>
      <CheckList />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: arrow keys go along the words in it. */}
      <div onKeyDown={goAlong}>
        <BaselineCommands />
        <BaselineList />
        <FigureChoice />
      </div>
    </>
  );
}
