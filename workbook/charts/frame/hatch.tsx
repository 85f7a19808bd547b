import type { JSX } from 'preact';
import { ink } from '../../drawing/index';

/** Section lining at 45° for what a limit forbids. */
export function Hatch({ id }: { id: string }): JSX.Element {
  return (
    <defs>
      <pattern id={id} width={6} height={6} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line x1={0} y1={0} x2={0} y2={6} stroke={ink('limit')} stroke-width={0.9} stroke-opacity={0.55} />
      </pattern>
    </defs>
  );
}
