import { effect } from '@preact/signals';
import { proxy, wrap } from 'comlink';
import { render } from 'preact';
import {
  type Document,
  type EngineService,
  type FirstDesignService,
  type HangarService,
  type ListeningService,
  openText,
  serialise,
} from '../engine/index';
import { App } from './page/app';
import { watchDrops } from './page/designs/drop';
import { watchLeaving } from './page/designs/leaving';
import { keepFocus, watchKeys } from './page/keys/index';
import { watchPaper } from './page/paper';
import { watchBeforePaper } from './page/print/before-paper';
import { watchRoom } from './page/room';
import { watchWayBack } from './page/way-back';
import { SheetContext } from './store/context';
import { loadDemo } from './store/demo';
import { createDesigns, DesignsContext } from './store/designs';
import { watchField } from './store/field-open';
import { ListeningContext } from './store/listening';
import { watchNewer } from './store/newer-edition';
import { nextTask } from './store/next-task';
import { openKeeper } from './store/open-keeper';
import { watchPrinting } from './store/printing';
import { createSheet, type Notice, refusal } from './store/sheet';

type Engine = EngineService & FirstDesignService & HangarService & ListeningService;

/** The engine's worker, with calls back to the page made so that they can cross. */
function startEngine(onFault: (sentence: string) => void): Engine {
  const worker = new Worker(new URL('../engine/worker.ts', import.meta.url), { type: 'module', name: 'engine' });
  worker.addEventListener('error', () => onFault('The engine could not be started. Load the page again.'));
  const remote = wrap<Engine>(worker);
  return {
    describe: () => remote.describe(),
    open: (document) => remote.open(document),
    set: (texts, shown) => remote.set(texts, shown),
    sweep: (request, progress) => remote.sweep(request, proxy(progress)),
    stop: (sweep) => remote.stop(sweep),
    variantGhosts: () => remote.variantGhosts(),
    flown: (name) => remote.flown(name),
    dayCard: (form) => remote.dayCard(form),
    trim: (observation) => remote.trim(observation),
    mends: (name) => remote.mends(name),
    best: (name, progress) => remote.best(name, proxy(progress)),
    haltBest: (name) => remote.haltBest(name),
    weighing: (name) => remote.weighing(name),
    reconcile: (found) => remote.reconcile(found),
    table: (view, from, to) => remote.table(view, from, to),
    tableFile: (view, format) => remote.tableFile(view, format),
    trace: (path, variant) => remote.trace(path, variant),
    fit: (name) => remote.fit(name),
    templates: () => remote.templates(),
    madeOf: (choices) => remote.madeOf(choices),
    forgotten: (parts) => remote.forgotten(parts),
    studies: () => remote.studies(),
    lessons: () => remote.lessons(),
    placeStudy: (name, answers) => remote.placeStudy(name, answers),
    chartOffer: (of) => remote.chartOffer(of),
    makeChart: (wish, place) => remote.makeChart(wish, place),
    makeVariable: (path, place) => remote.makeVariable(path, place),
    swapKind: (cell, kind) => remote.swapKind(cell, kind),
    check: (path, text) => remote.check(path, text),
    firstDesign: (form) => remote.firstDesign(form),
    tellDesign: (text) => remote.tellDesign(text),
    tellApart: (text, other) => remote.tellApart(text, other),
    offers: (text) => remote.offers(text),
    take: (document, text, piece) => remote.take(document, text, piece),
    listen: (sound, question, progress) => remote.listen(sound, question, proxy(progress)),
    haltListening: () => remote.haltListening(),
  };
}

/** The design that was open last time, else the demo. A kept sheet that can't be read is said and can be saved. */
async function firstDocument(kept: string | undefined): Promise<{ document: Document; notice?: Notice }> {
  const last = kept === undefined ? undefined : openText(kept);
  if (last?.ok) return { document: last.document };
  const demo = openText(await loadDemo());
  if (!demo.ok) throw new Error(demo.message);
  return {
    document: demo.document,
    notice: last && { ...refusal('The design kept from last time', last), text: kept },
  };
}

const paper = watchPaper();

async function start(): Promise<void> {
  const early: Notice[] = [];
  let tell = (notice: Notice): void => {
    early.push(notice);
  };
  const say = (sentence: string): void => tell({ title: sentence, sentences: [] });
  const engine = startEngine(say);
  let show = (_text: string, _unkept: boolean): void => {};
  const keeper = openKeeper(say, (text, unkept) => show(text, unkept));
  const kept = await keeper.start();
  const { document, notice } = await firstDocument(kept);
  await nextTask();
  if (kept === undefined || notice) keeper.startWith(serialise(document));
  const sheet = createSheet(document, {
    engine,
    keep: keeper,
    loadDemo,
    frozen: import.meta.env.DEV,
    now: () => performance.now(),
    // An address that isn't safe has no clipboard.
    ...(navigator.clipboard ? { copy: (text) => navigator.clipboard.writeText(text) } : {}),
  });
  const designs = createDesigns(sheet, keeper, { engine, firstVisit: kept === undefined, now: Date.now });
  show = (text, unkept) => {
    const opened = openText(text);
    if (!opened.ok) sheet.tell({ ...refusal('What the other tab has left', opened), text });
    else if (unkept) sheet.replace(opened.document, 'what the other tab has left');
    else sheet.follow(opened.document);
  };
  tell = sheet.tell;
  for (const each of notice ? [...early, notice] : early) tell(each);
  window.addEventListener('beforeunload', (event) => {
    if (designs.atRisk()) event.preventDefault();
  });
  watchKeys(sheet);
  keepFocus();
  watchDrops(sheet);
  watchPrinting();
  watchNewer(window);
  watchBeforePaper(sheet);
  watchWayBack(sheet);
  watchLeaving(sheet, keeper);
  watchField();
  effect(() => {
    window.document.title = `${sheet.document.value.title || 'Untitled design'} – Tetherwright`;
  });
  await nextTask();
  const app = window.document.getElementById('app')!;
  app.replaceChildren();
  render(
    <SheetContext.Provider value={sheet}>
      <DesignsContext.Provider value={designs}>
        <ListeningContext.Provider value={engine}>
          <App room={watchRoom()} paper={paper} />
        </ListeningContext.Provider>
      </DesignsContext.Provider>
    </SheetContext.Provider>,
    app,
  );
}

void start();
