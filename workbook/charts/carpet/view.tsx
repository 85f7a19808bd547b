import type { JSX } from 'preact';
import { LABEL_SIZE } from '../../drawing/index';
import { aboutChart } from '../frame/about';
import { Curve, GhostCurve } from '../frame/curve';
import { type Grid, readGrid } from '../frame/grid';
import { chartOf, type Drawn } from '../frame/kind';
import { halo, round } from '../frame/marks';
import { type LineStyle, lineStyle } from '../frame/palette';
import { TITLE_LINE } from '../frame/panels';
import type { SweepChartProps } from '../frame/props';
import { inSentence } from '../frame/words';
import { lineTable } from '../line/words';
import { type CarpetLayout, type CarpetLine, type CarpetPanel, layOutCarpet } from './layout';
import { carpetReadings, carpetSentences } from './words';

const STYLE: Readonly<Record<CarpetLine['family'], LineStyle>> = { across: lineStyle(1), along: lineStyle(0) };
const SAMPLE = 26;

/** Results over two axes as carpets: every crossing is one design, its height on the scale. */
export const CarpetChart = chartOf({
  read: readGrid,
  layOut: layOutCarpet,
  Whole: Keys,
  Under: Carpet,
  Over: Names,
  about: ({ data: { family, along } }) =>
    aboutChart(
      'Carpet',
      family.panels.map(({ title }) => title),
      [family.across.title, along.title],
    ),
  sentences: carpetSentences,
  readings: carpetReadings,
  table: ({ of, data }) => lineTable(data.family, of),
});

function Keys({ data: { along, family } }: Drawn<SweepChartProps, Grid, CarpetLayout>): JSX.Element {
  return (
    <>
      <Key family="along" title={along.title} row={0} />
      <Key family="across" title={family.across.title} row={1} />
    </>
  );
}

/** A piece of line with the axis that stays the same along it. */
function Key({ family, title, row }: { family: CarpetLine['family']; title: string; row: number }): JSX.Element {
  const y = row * TITLE_LINE + LABEL_SIZE / 2 + 2;
  return (
    <g>
      <Curve
        points={[
          { x: 0, y },
          { x: SAMPLE, y },
        ]}
        style={STYLE[family]}
      />
      <text x={SAMPLE + 6} y={round(y + LABEL_SIZE * 0.36)} fill={STYLE[family].text}>
        equal {inSentence(title)}
      </text>
    </g>
  );
}

function Carpet({ panel }: { panel: CarpetPanel }): JSX.Element {
  return (
    <>
      {panel.ghost.length > 0 && <GhostCurve points={panel.ghost} />}
      {panel.lines.map((line) => (
        <Curve key={line.key} points={line.points} style={STYLE[line.family]} />
      ))}
    </>
  );
}

function Names({ panel }: { panel: CarpetPanel }): JSX.Element {
  return (
    <>
      {panel.lines.map(
        ({ key, label, text, family }) =>
          label && (
            <text
              key={key}
              x={round(label.left + 2)}
              y={round(label.top + LABEL_SIZE)}
              fill={STYLE[family].text}
              {...halo}
            >
              {text}
            </text>
          ),
      )}
    </>
  );
}
