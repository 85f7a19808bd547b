import type { Shape } from '../blocks/block';
import { cautionsOf } from '../blocks/cautions';
import type { Document } from '../sheet/document';
import { catchUp } from '../sheet/evaluate';
import { baselineValues, editLive, faultsOfLive, type Live, openBaseline, openLive, setLive } from '../sheet/live';
import { neededFor } from '../sheet/needed';
import { cellsOf } from '../sheet/sheets';
import type { Library } from '../sheet/specs';
import { variantsOf } from '../sheet/variants';
import type { Description, Fault, SweepProgress, TraceAnswer } from '../terms/index';
import { type BestNews, bestSteps, faultyBest } from './best/best';
import type { BestAnswer, BestProgress } from './best/told';
import { startSteps } from './by-steps';
import { daySteps } from './day/day';
import type { DayAnswer, DayForm } from './day/told';
import { describeBlock } from './describe/blocks';
import { describeTable } from './describe/tables';
import { drawingOf, drawingOfLive } from './design/drawing';
import { forgottenIn } from './design/forgotten';
import { massesMadeOf } from './design/made-of';
import { reconcile } from './design/reconcile';
import { settleFor, stepsShown, valuesOf } from './design/shown';
import { templatesOf } from './design/templates';
import { traceOf } from './design/trace';
import { faultyFit, fitSteps } from './fit/fit';
import { faultyFlown, flownSteps } from './fit/flown';
import type { FitAnswer, FlownAnswer } from './fit/told';
import { makeChart, makeVariable, offerChart, swapKind } from './make/index';
import type { ChartOffer, ChartWish, MakingAnswer, MakingPlace } from './make/told';
import { faultyMends, mendSteps } from './mends/mends';
import type { MendsAnswer } from './mends/told';
import { askedOf, lessons, placeStudy, studies } from './place/index';
import type { StudyAnswer, StudyTold } from './place/told';
import { typedSlot } from './run/axis';
import { type StudyPorts, startStudies } from './studies';
import { startTables } from './tables/serve';
import type { TableFormat, TableView } from './tables/told';
import type { Checked, Shown, Snapshot, SweepRequest, VariantGhosts } from './told';
import type { TrimAnswer } from './trim/told';
import { trimFor } from './trim/trim';
import { openVariant } from './variants/live';
import type { WeighingAnswer } from './weighing/told';
import { weighingOf } from './weighing/weighing';

/** The engine with one document open: what the worker serves, and the command line and tests call. */
export function startEngine(library: Library, ports: StudyPorts) {
  const blocks = new Map(library.blocks.map((block) => [block.kind, block]));
  const running = startStudies(ports);
  const tables = startTables();
  const fits = startSteps<FitAnswer>(ports, { steps: fitSteps, none: (name) => faultyFit(name, '') });
  const flown = startSteps<FlownAnswer>(ports, { steps: flownSteps, none: (name) => faultyFlown(name, '') });
  const mends = startSteps<MendsAnswer>(ports, { steps: mendSteps, none: (name) => faultyMends(name, '') });
  const best = startSteps<BestAnswer, BestNews>(ports, {
    steps: bestSteps,
    none: (name) => faultyBest(name, ''),
    soFar: (news) => news.soFar(),
  });
  let live: Live | undefined;
  let revision = 0;
  let before: Live | undefined;
  let daysAsked = 0;
  let baseline: Float64Array | undefined;
  let ghost: readonly Shape[] | undefined;

  /** Some of it may be behind. */
  function moving(): Live {
    if (!live) throw new RangeError('No document is open');
    return live;
  }

  function present(): Live {
    const now = moving();
    catchUp(now.state);
    return now;
  }

  /** A variant that charts show, once for each revision. */
  const ghosts = { revision: -1, of: new Map<string, Live>() };
  function ghostOf(name: string): Live | undefined {
    if (ghosts.revision !== revision) ghosts.of.clear();
    ghosts.revision = revision;
    const now = present();
    const shown = variantsOf(now.compiled.document).some((each) => each.on_charts && each.name === name);
    const own = shown ? (ghosts.of.get(name) ?? openVariant(now, name)) : undefined;
    if (own) ghosts.of.set(name, own);
    return own;
  }

  /** Takes a design whose baseline may be another one or lie in other slots. */
  function take(next: Live): void {
    live = next;
    before = openBaseline(next, library);
    baseline = before && baselineValues(next, before);
    ghost = baseline && drawingOf(next.compiled, blocks, baseline);
  }

  function snapshot(withNames: boolean): Snapshot {
    const now = moving();
    const { compiled } = now;
    return {
      revision,
      shape: compiled.program.shape,
      ...(withNames ? { names: compiled.names } : {}),
      ...valuesOf(now),
      ...(baseline ? { baseline: baseline.slice() } : {}),
      faults: faultsOfLive(now),
      drawing: drawingOfLive(now, blocks),
      ...(ghost ? { ghost } : {}),
    };
  }

  return {
    describe: async (): Promise<Description> => describe(library),
    async open(document: Document): Promise<Snapshot> {
      running.stopAll();
      revision++;
      take(live ? editLive(live, document, library).live : openLive(document, library));
      return snapshot(true);
    },
    async set(texts: readonly (readonly [path: string, text: string])[], shown?: Shown): Promise<Snapshot> {
      running.stopAll();
      revision++;
      const held = moving();
      const needed = shown && neededFor(held.compiled.program, stepsShown(held, shown));
      const edited = setLive(held, texts, library, needed);
      if (edited.structure) take(edited.live);
      else live = edited.live;
      const renumbered = edited.live.compiled.program.shape !== held.compiled.program.shape;
      const { faults, ...rest } = snapshot(renumbered);
      return { ...rest, faults: [...faults, ...edited.unknown.map(nowhere)] };
    },
    async sweep(request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void> {
      const baseline = request.variant === undefined ? before : ghostOf(request.variant);
      await running.run({ live: moving(), baseline }, revision, request, progress);
    },
    async variantGhosts(): Promise<VariantGhosts> {
      const now = present();
      const shown = variantsOf(now.compiled.document).filter((each) => each.on_charts);
      const variants = shown.flatMap(({ name }) => {
        const own = ghostOf(name);
        return own ? [{ name, values: baselineValues(now, own) }] : [];
      });
      return { revision, variants };
    },
    async stop(sweep: string): Promise<void> {
      running.stop(sweep);
    },
    fit: async (name: string): Promise<FitAnswer> => fits.run(present(), revision, name, () => revision),
    flown: async (name: string): Promise<FlownAnswer> => flown.run(present(), revision, name, () => revision),
    async dayCard(form: DayForm): Promise<DayAnswer> {
      const steps = daySteps(present(), form, library);
      const mine = ++daysAsked;
      let step = steps.next();
      while (!step.done) {
        await ports.pause();
        // A newer day is asked for: nobody waits for this one.
        if (mine !== daysAsked) return { ok: false, message: '' };
        step = steps.next();
      }
      return step.value;
    },
    trim: async (key: string): Promise<TrimAnswer> => trimFor(key, present(), library),
    mends: async (name: string): Promise<MendsAnswer> => mends.run(present(), revision, name, () => revision),
    best: async (name: string, progress: (p: BestProgress) => void): Promise<BestAnswer> =>
      best.run(
        present(),
        revision,
        name,
        () => revision,
        ({ soFar: _, ...news }) => progress({ best: name, ...news }),
      ),
    async haltBest(name: string): Promise<void> {
      best.halt(name);
    },
    weighing: async (name: string): Promise<WeighingAnswer> => ({ ...weighingOf(present(), name), revision }),
    table(view: TableView, from: number, to: number) {
      const rows = running.rows(view.series, revision);
      return tables.answer(rows ? present() : moving(), rows, view, from, to);
    },
    tableFile: (view: TableView, format: TableFormat) =>
      tables.file(present(), running.rows(view.series, revision), view, format),
    async trace(path: string, variant?: string): Promise<TraceAnswer> {
      const now = moving();
      settleFor(now, [], ownerOf(path, now));
      if (variant === undefined) return { revision, ...traceOf(now, baseline, blocks, path) };
      const own = ghostOf(variant);
      return { revision, ...traceOf(now, own && baselineValues(now, own), blocks, path) };
    },
    templates: async () => templatesOf(present(), blocks),
    async madeOf(choices: readonly string[]) {
      return choices.map((choice) => massesMadeOf(present(), choice));
    },
    async forgotten(parts: string) {
      return forgottenIn(present(), parts, library);
    },
    async reconcile(found: string) {
      return reconcile(present(), found, library);
    },
    studies: async (): Promise<readonly StudyTold[]> =>
      studies().map((study) => askedOf(study, present().compiled.document, library.blocks)),
    lessons: async (): Promise<readonly StudyTold[]> =>
      lessons().map((lesson) => askedOf(lesson, present().compiled.document, library.blocks)),
    async placeStudy(name: string, answers: Readonly<Record<string, string>>): Promise<StudyAnswer> {
      const study = [...studies(), ...lessons()].find((each) => each.name === name);
      if (!study) return { ok: false, message: `There is no study called “${name}”.` };
      return placeStudy(study, present(), library, answers);
    },
    chartOffer: async (of: string): Promise<ChartOffer> => offerChart(of, present()),
    makeChart: async (wish: ChartWish, place: MakingPlace): Promise<MakingAnswer> =>
      makeChart(wish, present(), library, place),
    makeVariable: async (path: string, place: MakingPlace): Promise<MakingAnswer> =>
      makeVariable(path, present(), place),
    swapKind: async (cell: string, kind: string): Promise<MakingAnswer> => swapKind(cell, kind, present(), library),
    async check(path: string, text: string): Promise<Checked> {
      const { compiled } = present();
      const reading = compiled.read(path, text);
      if (!reading) return { ok: false, fault: nowhere(path) };
      if (reading.is === 'constant') return { ok: true, value: reading.value };
      // A formula is tried on a copy of the sheet: what it gives depends on everything else.
      const tried = setLive(openLive(compiled.document, library), [[path, text]], library).live;
      const fault = faultsOfLive(tried).find((each) => each.path === path);
      if (fault) return { ok: false, fault };
      return { ok: true, value: tried.state.m[typedSlot(path, tried.compiled.program)]! };
    },
  };
}

const describe = ({ blocks, tables }: Library): Description => ({
  blocks: blocks.map(describeBlock),
  cautions: cautionsOf(blocks),
  tables: tables.map(describeTable),
});

const nowhere = (path: string): Fault => ({
  cell: '',
  path,
  state: 'fault',
  message: `There is nothing called ${path} that a text can be typed into.`,
});

/** Id of the piece that a trace is of. */
const ownerOf = (path: string, { compiled }: Live): readonly string[] =>
  cellsOf(compiled.document).flatMap(({ id, name }) => (path.startsWith(`${name}.`) ? [id] : []));
