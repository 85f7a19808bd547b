import type { ComponentType, JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { measures, type Point, useMeasured } from '../../drawing/index';
import { ChartFigure, type Take } from './chart-figure';
import { designAt } from './design-at';
import type { TableData } from './figures';
import { Hatch } from './hatch';
import { handlesOf, type Movable } from './moves';
import { AxisTitleWords, PanelFrame, Spots, TitleWords, ZoneNames } from './panel-view';
import type { DrawnPanel, Laid } from './panels';
import { PLAIN_WIDTH, PlaceHolder } from './place-holder';
import type { ChartProps } from './props';
import type { ReadSeries } from './readings';
import { stopSentences } from './stop-words';

/** What a chart is drawn from, how it is asked for, and where everything lies. */
export interface Drawn<P, D, L> {
  readonly of: P;
  readonly data: D;
  readonly chart: L;
}

/** What is peculiar to one kind of chart; axes, limits, marks, reading and table are those of all. */
export interface ChartKind<P extends ChartProps, D, N extends DrawnPanel, L extends Laid<N>> {
  /** What is to be drawn; a sentence where there is nothing. */
  read(of: P): D | string;
  layOut(data: D, of: P, width: number, before: L | undefined): L;
  /** Drawn over the frames of all plots. */
  readonly Whole?: ComponentType<Drawn<P, D, L> & { readonly hatch: string }>;
  /** Drawn in each plot under the words of its limits, and over them. */
  readonly Under?: ComponentType<{ readonly panel: N }>;
  readonly Over?: ComponentType<{ readonly panel: N }>;
  /** What the picture is, for those who don't see it: its kind, what its axes are, what is drawn. */
  about(drawn: Drawn<P, D, L>): string;
  /** What to see, in sentences; blank ones are left out. */
  sentences(drawn: Drawn<P, D, L>): readonly string[];
  readings(drawn: Drawn<P, D, L>): readonly ReadSeries[];
  table(drawn: Drawn<P, D, L>): TableData;
  /** Along what the mark of the present design can be moved. */
  moves?(data: D): Movable;
  /** Where reading by keys begins, if not at the present design. */
  start?(chart: L): Point | undefined;
}

const SIGNS = ['Square', 'Triangle', 'Diamond'] as const;

/** "Square: ply tail. Triangle: thin lines." for the variants that are marked. */
function variantNote({ others = [] }: ChartProps, { panels, variants = [] }: Laid<DrawnPanel>): string {
  const marked = new Set([...variants, ...panels.flatMap(({ spots }) => spots.flatMap(({ order }) => order ?? []))]);
  return others.flatMap(({ name }, k) => (marked.has(k) ? `${SIGNS[k]}: ${name}.` : [])).join(' ');
}

/** How a design of its trial series is taken. */
function takeOf(of: ChartProps): Take | undefined {
  const { taker } = of;
  if (!taker || !('progress' in of)) return undefined;
  if (of.designOf) return { taker, designOf: of.designOf };
  return of.progress.axes.length === 0 ? undefined : { taker, designOf: (sample) => designAt(of.progress, sample) };
}

/** The component that draws a kind of chart as wide as its place. */
export function chartOf<P extends ChartProps, D, N extends DrawnPanel, L extends Laid<N>>(
  kind: ChartKind<P, D, N, L>,
): ComponentType<P> {
  const { Whole, Under, Over } = kind;

  function Picture({ of, data, width }: { of: P; data: D; width: number }): JSX.Element {
    const hatch = `hatch-${useId()}`;
    const before = useRef<L | undefined>(undefined);
    const chart = kind.layOut(data, of, width, before.current);
    before.current = chart;
    const drawn = { of, data, chart };
    const now = chart.panels.flatMap(({ spots }) => spots).find((spot) => spot.kind === 'now');
    return (
      <ChartFigure
        title={of.cell.title}
        about={kind.about(drawn)}
        sentences={[...stopSentences(of), ...kind.sentences(drawn), variantNote(of, chart)]}
        width={chart.width}
        height={chart.height}
        start={now?.at ?? kind.start?.(chart)}
        handles={kind.moves ? handlesOf(kind.moves(data), chart.panels, of) : []}
        hand={of.hand}
        take={takeOf(of)}
        draw={() => <Chart {...of} />}
        series={() => kind.readings(drawn)}
        table={() => kind.table(drawn)}
      >
        <Hatch id={hatch} />
        {chart.panels.map((panel) => (
          <PanelFrame key={panel.key} panel={panel} width={chart.width} hatch={hatch} />
        ))}
        {Whole && <Whole {...drawn} hatch={hatch} />}
        {chart.panels.map((panel) => (
          <g key={panel.key} data-panel={panel.key}>
            <TitleWords of={panel.title} />
            {Under && <Under panel={panel} />}
            <ZoneNames zones={panel.zones} />
            {Over && <Over panel={panel} />}
            <Spots spots={panel.spots} />
          </g>
        ))}
        {chart.xTitle && <AxisTitleWords of={chart.xTitle} />}
      </ChartFigure>
    );
  }

  function Shown({ of, width }: { of: P; width: number }): JSX.Element {
    const data = kind.read(of);
    return typeof data === 'string' ? <p>{data}</p> : <Picture of={of} data={data} width={width} />;
  }

  function Chart(of: P): JSX.Element {
    const [host, measured] = useMeasured();
    // Drawn once, when it is known how wide: drawing takes longer than anything else while the page opens.
    const width = of.width ?? measured ?? (measures() ? undefined : PLAIN_WIDTH);
    return <div ref={host}>{width === undefined ? <PlaceHolder panels={1} /> : <Shown of={of} width={width} />}</div>;
  }
  return Chart;
}
