import './charts.css';
import type { ComponentChildren, JSX } from 'preact';
import { useState } from 'preact/hooks';
import { SaveFigure } from '../../controls/save-figure';
import { TakeDesign } from '../../controls/take-design';
import type { Point } from '../../drawing/index';
import type { Place, Taker } from '../../store/taker';
import { Figures, type TableData } from './figures';
import type { Handle } from './moves';
import type { Hand } from './props';
import { ReadOut } from './read-out';
import type { ReadSeries } from './readings';
import { isStop } from './stop-words';

/** Who takes designs, and which one a sample is. */
export interface Take {
  readonly taker: Taker;
  designOf(sample: number): readonly Place[];
}

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
  /** How the design that a point stands for is taken. */
  readonly take?: Take | undefined;
  /** The chart by itself, to be saved as a figure; missing: it can't be. */
  readonly draw?: (() => JSX.Element) | undefined;
  readonly series: () => readonly ReadSeries[];
  readonly table: () => TableData;
  readonly children: ComponentChildren;
}

/** What every chart has: a picture that can be read out, a sentence or two under it, and its numbers. */
export function ChartFigure(props: ChartFigureProps): JSX.Element {
  const { title, about = '', width, height, start, handles, hand, take, draw, series, table, children } = props;
  // The design as it was pressed: the trial series may have other samples by then.
  const [held, hold] = useState<readonly Place[] | undefined>(undefined);
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
        onHold={take && ((sample) => hold(take.designOf(sample)))}
      >
        {children}
      </ReadOut>
      {take && held && <TakeDesign taker={take.taker} design={held} onClose={() => hold(undefined)} />}
      <figcaption class="chart-caption">
        {sentences.filter(isStop).map((sentence) => (
          <span key={sentence} class="too-low">{`${sentence} `}</span>
        ))}
        {sentences.filter((sentence) => !isStop(sentence)).join(' ')}
      </figcaption>
      <Figures title={title} table={table} />
      {draw && <SaveFigure title={title} draw={draw} />}
    </figure>
  );
}
