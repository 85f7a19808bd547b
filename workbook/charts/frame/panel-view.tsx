import type { JSX } from 'preact';
import { LABEL_SIZE } from '../../drawing/index';
import { type Forbidden, Frame } from './frame';
import { Baseline, Now, round, VariantMark, Words } from './marks';
import { type AxisTitle, type DrawnPanel, TITLE_LINE, type Title } from './panels';
import { type DrawnSpot, keyOf } from './spots';
import type { DrawnZone } from './zones';

/** Grid, axes and limits of a plot. */
export function PanelFrame({ panel, width, hatch }: { panel: DrawnPanel; width: number; hatch: string }): JSX.Element {
  const { box, across, up, zones } = panel;
  const forbidden = zones.map(({ zone, along }): Forbidden => {
    const { range } = along === 'up' ? up : across;
    const beyond = [zone.limit, range[zone.side === 'below' ? 0 : 1]] as const;
    return along === 'up' ? { up: beyond, limitUp: zone.limit } : { across: beyond, limitAcross: zone.limit };
  });
  return <Frame width={width} box={box} across={across} up={up} forbidden={forbidden} hatch={hatch} />;
}

export function TitleWords({ of: { lines, top } }: { of: Title }): JSX.Element {
  return (
    <text>
      {lines.map((line, k) => (
        <tspan key={line} x={0} y={top + LABEL_SIZE + 1 + k * TITLE_LINE}>
          {line}
        </tspan>
      ))}
    </text>
  );
}

/** What the limits of a plot say. */
export function ZoneNames({ zones }: { zones: readonly DrawnZone[] }): JSX.Element {
  return (
    <>
      {zones.map(
        ({ zone, along, words }) => words && <Words key={`${along} ${zone.side} ${zone.limit}`} words={words} />,
      )}
    </>
  );
}

/** The baseline and the variants beneath the present design. */
export function Spots({ spots }: { spots: readonly DrawnSpot[] }): JSX.Element {
  return (
    <>
      {spots.map((spot) => spot.kind === 'baseline' && <Baseline key={keyOf(spot)} spot={spot} />)}
      {spots.map((spot) => spot.kind === 'variant' && <VariantMark key={keyOf(spot)} spot={spot} />)}
      {spots.map((spot) => spot.kind === 'now' && <Now key={keyOf(spot)} spot={spot} />)}
    </>
  );
}

export function AxisTitleWords({ of }: { of: AxisTitle }): JSX.Element {
  return (
    <text x={round(of.at.x)} y={round(of.at.y)} text-anchor="middle">
      {of.text}
    </text>
  );
}
