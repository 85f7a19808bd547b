import { BaselineCommands } from './baseline-commands';
import { BaselineList } from './baseline-list';
import { CheckList } from './check-list';
import { FigureChoice } from './figure-choice';

/** Checks that hold, the baseline, and which figures stand here. */
export function StandingFigures() {
  return (
    <>
      <CheckList />
      <BaselineCommands />
      <BaselineList />
      <FigureChoice />
    </>
  );
}
