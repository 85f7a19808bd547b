import './charts.css';
import type { ComponentChildren, JSX } from 'preact';
import type { Point } from '../../drawing/index';
import { Figures, type TableData } from './figures';
import type { Handle } from './moves';
import type { Hand } from './props';
import { ReadOut } from './read-out';
import type { ReadSeries } from './readings';
import { isStop } from './stop-words';

export interface ChartFigureProps {
  readonly title: string;
  /** What the picture is: kind, axes, what is drawn. */
  readonly about?: string;
  /** What to see, computed from the chart; blank ones are left out. */
  readonly sentences: readonly string[];
  readonly width: number;
  readonly height: number;
  /** The present design. */
  readonly start?: Point | undefined;
  /** Marks that can be moved, and who moves them. */
  readonly handles?: readonly Handle[];
  readonly hand?: Hand | undefined;
  readonly series: () => readonly ReadSeries[];
  readonly table: () => TableData;
  readonly children: ComponentChildren;
}

/** What every chart has: a picture that can be read out, a sentence or two under it, and its numbers. */
export function ChartFigure(props: ChartFigureProps): JSX.Element {
  const { title, about = '', width, height, start, handles, hand, series, table, children } = props;
  const sentences = props.sentences.filter((sentence) => sentence !== '');
  return (
    <figure class="chart-picture">
      <ReadOut
        title={title}
        says={[`${title}.`, about, ...sentences].filter((each) => each !== '').join(' ')}
        width={width}
        height={height}
        start={start}
        handles={handles}
        hand={hand}
        series={series}
      >
        {children}
      </ReadOut>
      <figcaption class="chart-caption">
        {sentences.filter(isStop).map((sentence) => (
          <span key={sentence} class="too-low">{`${sentence} `}</span>
        ))}
        {sentences.filter((sentence) => !isStop(sentence)).join(' ')}
      </figcaption>
      <Figures title={title} table={table} />
    </figure>
  );
}
