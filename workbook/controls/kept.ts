import { type FunctionComponent, h } from 'preact';
import { useMemo } from 'preact/hooks';

/** The component, drawn again by its parent only when one of its props is another one. Signals that it reads still redraw it. */
export function kept<Props extends object>(component: FunctionComponent<Props>): FunctionComponent<Props> {
  return function Kept(props) {
    return useMemo(() => h(component, props), Object.values(props));
  };
}
