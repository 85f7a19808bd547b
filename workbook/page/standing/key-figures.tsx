import { Fragment } from 'preact';
import { NumberMenu } from '../../cells/index';
import { goAlong } from '../../controls/along';
import { FaultWords } from '../../controls/fault-flag';
import { Mark } from '../../controls/mark';
import { useSheet } from '../../store/context';
import { CautionNote } from './caution';
import { cautionsAfter } from './cautions';

/** The figures that the sheet is judged by, each with its change from the baseline, cautions where they bear. */
export function KeyFigures() {
  const sheet = useSheet();
  const figures = sheet.part('figures');
  const inRoles = figures.map(sheet.rolePath);
  const cautions = sheet.offered.value?.cautions ?? [];
  const broken = new Set(sheet.stops.value.map(({ of }) => of.trim()));
  const isBroken = (path: string): boolean => broken.has(path) || sheet.under(path) !== undefined;
  return (
    <section class="figures" aria-labelledby="figures-title" onKeyDown={goAlong}>
      <div class="figures-head">
        <h2 id="figures-title">Key figures</h2>
        <span class="aside">
          {sheet.baselineState.value === 'none' ? 'no baseline yet' : 'change from the baseline'}
        </span>
      </div>
      {figures.length === 0 && (
        <p class="aside">None is chosen yet: “Choose the key figures” below has all numbers of the sheet.</p>
      )}
      {figures.map((path, index) => (
        <Fragment key={path}>
          <div class={`figure ${isBroken(path) ? 'broken' : ''}`} title={sheet.under(path)?.because}>
            <span class="figure-title">
              {isBroken(path) && (
                <>
                  <Mark holds={false} />
                  <span class="unseen">stop: </span>
                </>
              )}
              <NumberMenu path={path} title={sheet.name(path)?.title ?? path} enters={index === 0} />
            </span>
            <output class="figure-value" aria-live="off" data-figure={path}>
              {sheet.shown(path)}
            </output>
            <span class="change" data-change={path}>
              {sheet.change(path)}
            </span>
          </div>
          <FigureFault path={path} />
          <CautionNote cautions={cautionsAfter(cautions, inRoles, index)} cell={path.split('.', 1)[0]!} />
        </Fragment>
      ))}
    </section>
  );
}

/** Why a figure has no number, once for each cause. */
function FigureFault({ path }: { path: string }) {
  const sheet = useSheet();
  const figures = sheet.part('figures');
  const fault = sheet.faultBehind(path);
  if (!fault) return null;
  const earlier = figures.slice(0, figures.indexOf(path));
  if (earlier.some((other) => sheet.faultBehind(other)?.message === fault.message)) return null;
  return (
    <p class="figure-reason">
      <FaultWords fault={fault} />
    </p>
  );
}
