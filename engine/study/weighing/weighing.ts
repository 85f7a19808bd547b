import { ballastAt, restMass } from '../../physics/index';
import { weighingPaths } from '../../sheet/cells/index';
import type { WeighingCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { findStudy } from '../kinds/find';
import { causeOf } from '../run/cause';
import { fillTogether } from '../run/fill';
import { startRunner } from '../run/runner';
import { planWeighing, WEIGHING, type WeighingPlan } from './plan';
import type { WeighedPart, WeighingAnswer } from './told';

type Answer = Omit<WeighingAnswer, 'revision'>;

/** What the bench of this name tells of the design. */
export function weighingOf(live: Live, name: string): Answer {
  const cell = findStudy<WeighingCell>(live, WEIGHING, name);
  if (typeof cell === 'string') return faultyWeighing(name, cell);
  const { compiled, state } = live;
  const slot = compiled.program.slotOf.get(`${cell.parts}.x`)!;
  const cause = causeOf(compiled, state, slot);
  if (cause !== undefined) return faultyWeighing(name, cause);
  const plan = planWeighing(cell, live);
  return toldOf(cell, plan, runOf(plan), live);
}

const NOTHING = { mass: Number.NaN, x: Number.NaN };

const faultyWeighing = (weighing: string, message: string): Answer => ({
  ...{ weighing, state: 'fault', message, parts: [], next: '', history: [], done: Number.NaN },
  ...{ weighed: { ...NOTHING, y: Number.NaN }, finished: { ...NOTHING, band: Number.NaN } },
  ...{ wanted: Number.NaN, within: Number.NaN },
});

/** CG station and its deviation in every sample. */
function runOf(plan: WeighingPlan): readonly { readonly x: number; readonly band: number }[] {
  const runner = startRunner(plan.compiled, plan, fillTogether(plan));
  const { columns } = runner.run(Uint32Array.from({ length: plan.total }, (_, k) => k));
  runner.finish();
  const [x, band] = columns as [Float64Array, Float64Array];
  return Array.from({ length: plan.total }, (_, k) => ({ x: x[k]!, band: band[k]! }));
}

/** Masses with their places as one: NaN where there is no mass. */
function together(bodies: readonly { readonly mass: number; readonly x: number; readonly y: number }[]) {
  const sum = (of: (body: (typeof bodies)[number]) => number): number =>
    bodies.reduce((all, body) => all + of(body), 0);
  const mass = sum((body) => body.mass);
  return { mass, x: sum((body) => body.mass * body.x) / mass, y: sum((body) => body.mass * body.y) / mass };
}

function toldOf(
  cell: WeighingCell,
  { table, benched, came, open }: WeighingPlan,
  samples: ReturnType<typeof runOf>,
  { compiled, state }: Live,
): Answer {
  const at = (path: string): number => state.m[compiled.program.slotOf.get(path) ?? -1] ?? Number.NaN;
  const bodyAt = (path: string) => ({ mass: at(`${path}.mass`), x: at(`${path}.x`), y: at(`${path}.y`) });
  const finished = { mass: at(`${table.name}.mass`), x: at(`${table.name}.x`), band: at(`${table.name}.x_sd`) };
  const paths = weighingPaths(cell);
  const [wanted, within] = [at(paths.text), at(paths.within)];
  const parts = benched.map(({ path, state: now }): WeighedPart => {
    const [body, k] = [bodyAt(path), open.findIndex((each) => each.path === path)];
    const band = samples[came.length + 1 + k]?.band ?? Number.NaN;
    const isOpen = now !== 'weighed';
    return {
      ...{ path, state: now, mass: body.mass, estimate: at(`${path}.estimate`), x: body.x },
      band: isOpen ? band : Number.NaN,
      share: isOpen ? 1 - (band / finished.band) ** 2 : Number.NaN,
      mayWeigh: isOpen ? mayWeigh(finished, wanted, body) : Number.NaN,
    };
  });
  const rest = together(open.map(({ path }) => bodyAt(path)));
  const known = {
    mass: finished.mass - rest.mass,
    moment: finished.mass * finished.x - (open.length > 0 ? rest.mass * rest.x : 0),
  };
  const knows = came.length > 0 || known.mass > LEAST;
  return {
    ...{ weighing: cell.name, state: 'settled', parts, finished, wanted, within },
    next: nextOf(parts),
    history: samples.slice(0, came.length + 1).map((told, k) => ({ path: came[k - 1]?.path ?? '', ...told })),
    done: at(`${table.name}.weighed_share`),
    weighed: came.length === 0 ? { ...NOTHING, y: Number.NaN } : together(came.map(({ path }) => bodyAt(path))),
    ...(Number.isNaN(wanted) || !(rest.mass > 0)
      ? {}
      : {
          rest: {
            mass: rest.mass,
            may: restMass(
              knows ? Math.max(0, known.mass) : 0,
              knows ? known.moment / known.mass : Number.NaN,
              rest.x,
              wanted - within,
              wanted + within,
            ),
          },
        }),
  };
}

/** Less than this, kg, is no mass but what is left of rounding. */
const LEAST = 1e-9;

/** What a part may weigh so that the CG comes to lie where it is wanted, everything else as it is. */
function mayWeigh(
  model: { readonly mass: number; readonly x: number },
  wanted: number,
  { mass, x }: { readonly mass: number; readonly x: number },
): number {
  if (Number.isNaN(wanted)) return Number.NaN;
  const more = ballastAt(model.mass, model.x, wanted, x).value;
  return mass + more >= 0 ? mass + more : Number.NaN;
}

/** The part that takes most of the band with it; of those that take nothing the heaviest, since it has to be weighed anyhow. */
function nextOf(parts: readonly WeighedPart[]): string {
  const open = parts.filter(({ state }) => state !== 'weighed');
  const rank = ({ share }: WeighedPart): number => (Number.isNaN(share) ? 0 : Math.max(0, share));
  return open.toSorted((a, b) => rank(b) - rank(a) || Math.abs(b.mass) - Math.abs(a.mass))[0]?.path ?? '';
}
