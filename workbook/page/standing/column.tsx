import type { ComponentChildren } from 'preact';
import { DrawingView } from '../../cells/index';
import { useSheet } from '../../store/context';
import { DrawingCommands } from './drawing';
import { StandingFigures } from './figures';

/** Beside the cells and always in sight: the scale drawing, the key figures and the checks. */
export function StandingColumn({ children }: { children: ComponentChildren }) {
  const title = useSheet().drawingTitle.value;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls by itself on a low window, so keys have to reach it.
    <aside class="standing" aria-label="Drawing and key figures" tabIndex={0}>
      <DrawingCommands />
      {title !== undefined && <DrawingView title={title} />}
      <StandingFigures />
      {children}
    </aside>
  );
}
