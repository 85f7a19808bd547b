import { BEST_WAYS, type BestCell, type BestGoal } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { AddFrom, Pick } from '../shared/pick';
import { Tick } from '../shared/tick';
import { isResult, nameOptions, Wanted } from '../shared/wanted';
import { AxesForm } from '../sweep/axes-form';
import { limitsOf } from './limits';

const MOST_GOALS = 3;
const LEAST_GOALS = 2;

/** What is wanted, along what it is looked for, which limits are kept, and what else is told. */
export function BestForm({ cell }: { cell: BestCell }) {
  const sheet = useSheet();
  const change = (to: Partial<BestCell>): void => sheet.changeCell({ ...cell, ...to });
  return (
    <>
      <Goals cell={cell} onChange={(goals) => change({ goals })} />
      <AxesForm cell={cell} onChange={(axes) => change({ axes })} />
      <p class="aside">
        These are tried first; then it looks closer about the best of them, in steps down to a sixteenth.
      </p>
      <Keeps cell={cell} />
      <Wanted id={cell.id} wanted={cell.wanted} sheet={sheet} onChange={(wanted) => change({ wanted })} />
    </>
  );
}

function Goals({ cell, onChange }: { cell: BestCell; onChange(goals: readonly BestGoal[]): void }) {
  const sheet = useSheet();
  const { goals } = cell;
  const free = (of: string) =>
    nameOptions(sheet, isResult).filter(({ value }) => value === of || goals.every((goal) => goal.of !== value));
  return (
    <fieldset class="set-up-list">
      <legend>What is wanted</legend>
      {goals.map((goal, k) => (
        <div class="set-up-fields" key={goal.of}>
          <Pick
            id={`${cell.id}-way${k + 1}`}
            label="Wanted"
            value={goal.way}
            options={BEST_WAYS.map((value) => ({ value, title: value }))}
            onPick={(way) => onChange(goals.with(k, { ...goal, way: way as BestGoal['way'] }))}
          />
          <Pick
            id={`${cell.id}-goal${k + 1}`}
            label="Of which result"
            value={goal.of}
            options={free(goal.of)}
            onPick={(of) => onChange(goals.with(k, { ...goal, of }))}
          />
          {goals.length > LEAST_GOALS && (
            <button type="button" class="word quiet" onClick={() => onChange(goals.toSpliced(k, 1))}>
              Remove<span class="unseen"> the wish for {sheet.name(goal.of)?.title ?? goal.of}</span>
            </button>
          )}
        </div>
      ))}
      {goals.length < MOST_GOALS && (
        <div class="set-up-fields">
          <AddFrom
            id={`${cell.id}-add-goal`}
            label={goals.length < LEAST_GOALS ? 'Result' : 'And of this result'}
            options={free('')}
            onAdd={(of) => onChange([...goals, { of, way: 'least' }])}
          />
        </div>
      )}
    </fieldset>
  );
}

/** Every limit is kept but those that are taken out. */
function Keeps({ cell }: { cell: BestCell }) {
  const sheet = useSheet();
  const limits = limitsOf(sheet);
  if (limits.length === 0) return null;
  const kept = (path: string): boolean => cell.keeps?.includes(path) ?? true;
  return (
    <fieldset class="set-up-list">
      <legend>Limits to keep</legend>
      <div class="ticks">
        {limits.map(({ path, title }) => (
          <Tick
            key={path}
            on={kept(path)}
            onChange={(on) => {
              const keeps = limits.map((limit) => limit.path).filter((each) => (each === path ? on : kept(each)));
              const { keeps: _, ...rest } = cell;
              sheet.changeCell(keeps.length === limits.length ? rest : { ...rest, keeps });
            }}
          >
            {title}
          </Tick>
        ))}
      </div>
    </fieldset>
  );
}
