import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { formatNumber, type SweepProgress } from '../../engine/index';
import { type Family, type Panel, sampleAt } from './family';

interface FiguresProps {
  readonly family: Family;
  readonly progress: SweepProgress;
}

/** The numbers behind a chart, folded away; written only while they are shown. */
export function Figures({ family, progress }: FiguresProps): JSX.Element {
  const [open, setOpen] = useState(false);
  return (
    <details class="chart-figures" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>Figures</summary>
      {open && <Table family={family} progress={progress} />}
    </details>
  );
}

function Table({ family, progress }: FiguresProps): JSX.Element {
  const named = family.lines.some((line) => line.label !== '');
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard.
    <section aria-label="Figures of the chart" tabIndex={0}>
      <table>
        <thead>
          <tr>
            <th scope="col" rowSpan={named ? 2 : 1}>
              {family.across.title}
            </th>
            {family.panels.map((panel) => (
              <th key={panel.path} scope={named ? 'colgroup' : 'col'} colSpan={family.lines.length}>
                {panel.title}
              </th>
            ))}
          </tr>
          {named && (
            <tr>
              {family.panels.flatMap((panel) =>
                family.lines.map((line) => (
                  <th key={`${panel.path} ${line.key}`} scope="col">
                    {line.label}
                  </th>
                )),
              )}
            </tr>
          )}
        </thead>
        <tbody>
          {Array.from(family.acrossValues, (value, k) => (
            <tr key={value}>
              <th scope="row">{family.options?.[value] ?? formatNumber(family.across.shown(value))}</th>
              {family.panels.flatMap((panel) =>
                family.lines.map((line) => (
                  <td key={`${panel.path} ${line.key}`}>{figure(panel, progress, line.samples[k]!)}</td>
                )),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** An empty place where nothing is computed yet, a dash where there is no answer. */
function figure(panel: Panel, progress: SweepProgress, sample: number): string {
  const value = panel.column && sampleAt(progress, panel.column, sample);
  if (value === undefined) return '';
  return value === 'gap' ? '–' : formatNumber(panel.shown(value));
}
