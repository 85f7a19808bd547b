import { BaselineCommands } from './baseline-commands';
import { BaselineList } from './baseline-list';
import { CheckList } from './check-list';
import { FigureChoice } from './figure-choice';
import { KeyFigures } from './key-figures';

/** Key figures, checks, and what is done with them. */
export function StandingFigures() {
  return (
    <>
      <KeyFigures />
      <CheckList />
      <BaselineCommands />
      <BaselineList />
      <FigureChoice />
    </>
  );
}
