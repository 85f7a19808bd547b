import type { JSX } from 'preact';
import { type Box, ink, LABEL_SIZE, type Point } from '../../drawing/index';
import { aboutChart } from '../frame/about';
import { curvePath } from '../frame/curve-path';
import { readGrid } from '../frame/grid';
import { chartOf } from '../frame/kind';
import { round, Words } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import { boxOf } from './labels';
import { type ContourLayout, type ContourPanel, layOutContour } from './layout';
import { contourReadings, contourSentences, contourTable } from './words';

/** One result over two axes, as lines along which it is the same. */
export const ContourChart = chartOf({
  read: readGrid,
  layOut: layOutContour,
  Whole: Regions,
  Under: Lines,
  Over: Names,
  about: ({ data: { family, along } }) =>
    aboutChart('Lines of equal value', [family.panels[0]!.title], [family.across.title, along.title]),
  moves: ({ family, along }) => ({ across: family.across, up: along }),
  sentences: contourSentences,
  readings: contourReadings,
  table: contourTable,
});

/** Crosses for designs without an answer, as long as they don't become a pattern. */
const MOST_GAPS = 400;

const outline = (points: readonly Point[]): string => `M${points.map((p) => `${round(p.x)},${round(p.y)}`).join('L')}Z`;

const regionKey = ({ of, zone }: ContourPanel['regions'][number]): string => `${of.path} ${zone.side}`;

/** What limits forbid. */
function Regions({ chart, hatch }: { chart: ContourLayout; hatch: string }): JSX.Element {
  return (
    <>
      {chart.panels[0]!.regions.map((region) => (
        <path
          key={regionKey(region)}
          data-region={region.of.path}
          d={region.outlines.map(outline).join('')}
          fill={`url(#${hatch})`}
        />
      ))}
    </>
  );
}

/** Lines of equal results and of limits, crosses where there is no answer. */
function Lines({ panel: { gaps, levels, regions } }: { panel: ContourPanel }): JSX.Element {
  return (
    <>
      {gaps.length <= MOST_GAPS &&
        gaps.map(({ x, y }) => (
          <path
            key={`${x} ${y}`}
            data-gap=""
            d={`M${round(x - 2)},${round(y - 2)}l4,4m0,-4l-4,4`}
            stroke={ink('muted')}
            stroke-width={0.9}
          />
        ))}
      {levels.map(({ level, lines }) => (
        <path
          key={level}
          data-level={level}
          d={lines.map(curvePath).join('')}
          fill="none"
          stroke={lineStyle(0).line}
          stroke-width={1.5}
          stroke-linejoin="round"
        />
      ))}
      {regions.map((region) => (
        <path
          key={regionKey(region)}
          data-limit={region.of.path}
          d={region.edge.map(curvePath).join('')}
          fill="none"
          stroke={ink('limit')}
          stroke-width={1.6}
        />
      ))}
    </>
  );
}

/** Paper in place of the line under its figure, so that nothing runs through a decimal point. */
const paperUnder = ({ left, right, top, bottom }: Box) => ({
  ...{ x: round(left + 1), y: round(top + 1), width: round(right - left - 2), height: round(bottom - top - 2) },
  fill: ink('paper'),
});

/** What the lines and the forbidden regions say. */
function Names({ panel: { levels, regions } }: { panel: ContourPanel }): JSX.Element {
  return (
    <>
      {levels.map(
        ({ level, label, text }) =>
          label && (
            <g key={level}>
              <rect {...paperUnder(boxOf(label, text))} />
              <text
                x={round(label.x)}
                y={round(label.y + LABEL_SIZE * 0.36)}
                text-anchor="middle"
                fill={lineStyle(0).text}
              >
                {text}
              </text>
            </g>
          ),
      )}
      {regions.map((region) => region.words && <Words key={regionKey(region)} words={region.words} />)}
    </>
  );
}
