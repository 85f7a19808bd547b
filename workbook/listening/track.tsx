import type { HeardFlight } from '../../engine/index';
import { useWidth } from '../drawing/index';
import { layOutTrack } from './track-layout';

const PLAIN_WIDTH = 560;

/** What was followed through a sound, and the swing that explains it. */
export function Track({ track }: Pick<HeardFlight, 'track'>) {
  const [host, width] = useWidth(PLAIN_WIDTH);
  const laid = layOutTrack(track, width);
  if (!laid) return null;
  const { frame, height } = laid;
  return (
    <figure class="heard-track" ref={host}>
      <svg width={laid.width} height={height} viewBox={`0 0 ${laid.width} ${height}`} role="img" aria-label={LABEL}>
        {laid.up.map(({ at, text }) => (
          <g key={text}>
            <line class="heard-grid" x1={frame.left} x2={frame.right} y1={at} y2={at} />
            <text x={frame.left - 6} y={at + 4} text-anchor="end">
              {text}
            </text>
          </g>
        ))}
        {laid.across.map(({ at, text }) => (
          <text key={text} x={at} y={frame.bottom + 16} text-anchor="middle">
            {text}
          </text>
        ))}
        <text x={frame.right} y={height - 2} text-anchor="end">
          time, s
        </text>
        <text x={0} y={10}>
          rpm as heard
        </text>
        {laid.dots.map(({ x, y }, k) => (
          <circle key={k} class="heard-dot" cx={x} cy={y} r={1.5} />
        ))}
        <path class="heard-swing" d={laid.curve} />
      </svg>
      <figcaption>
        From where the phone was. Dots: what was followed through the sound. Line: the swing of each lap.
      </figcaption>
    </figure>
  );
}

const LABEL = 'rpm as heard against time, with the swing of each lap';
