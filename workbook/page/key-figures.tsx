import { Fragment } from 'preact';
import { useSheet } from '../store/context';
import { CautionNote } from './caution';
import { cautionsAfter } from './cautions';

/** The figures that the sheet is judged by, each with its change from the baseline, cautions where they bear. */
export function KeyFigures() {
  const sheet = useSheet();
  const figures = sheet.part('figures');
  return (
    <section class="figures" aria-labelledby="figures-title">
      <div class="figures-head">
        <h2 id="figures-title">Key figures</h2>
        <span class="aside">
          {sheet.baselineState.value === 'none' ? 'no baseline yet' : 'change from the baseline'}
        </span>
      </div>
      {figures.map((path, index) => (
        <Fragment key={path}>
          <div class="figure">
            <span class="figure-title">{sheet.name(path)?.title ?? path}</span>
            <output class="figure-value" data-figure={path}>
              {sheet.shown(path)}
            </output>
            <span class="change" data-change={path}>
              {sheet.change(path)}
            </span>
          </div>
          <FigureFault path={path} />
          <CautionNote cautions={cautionsAfter(figures, index)} />
        </Fragment>
      ))}
    </section>
  );
}

/** Why a figure has no number, once for each cause. */
function FigureFault({ path }: { path: string }) {
  const sheet = useSheet();
  const figures = sheet.part('figures');
  const reason = sheet.reasonFor(path);
  if (!reason) return null;
  const earlier = figures.slice(0, figures.indexOf(path));
  if (earlier.some((other) => sheet.reasonFor(other) === reason)) return null;
  return <p class="figure-reason">{reason}</p>;
}
