/**
 * The door between the page and the engine: plain data only. Served by worker.ts through Comlink.
 * The page keeps the document; the engine is told of it and answers with numbers and faults.
 */

import type { Document } from './sheet/document';
import type { BestAnswer, BestProgress } from './study/best/told';
import type { DayAnswer, DayForm } from './study/day/told';
import type { Reconciliation } from './study/design/culprit';
import type { ForgottenThing } from './study/design/forgotten-thing';
import type { PlacedTemplate } from './study/design/templates';
import type { FirstDesignAnswer, FirstDesignForm } from './study/first-design/told';
import type { FitAnswer, FlownAnswer } from './study/fit/told';
import type { ChartOffer, ChartWish, MakingAnswer, MakingPlace } from './study/make/told';
import type { MendsAnswer } from './study/mends/told';
import type { StudyAnswer, StudyTold } from './study/place/told';
import type { TableAnswer, TableFormat, TableView } from './study/tables/told';
import type { Checked, Shown, Snapshot, SweepRequest, VariantGhosts } from './study/told';
import type { TrimAnswer } from './study/trim/told';
import type { WeighingAnswer } from './study/weighing/told';
import type { Description } from './terms/description';
import type { SweepProgress } from './terms/progress';
import type { TraceAnswer } from './terms/trace';

/** Makes designs beside the one that is open, which it leaves as it is. */
export interface FirstDesignService {
  firstDesign(form: FirstDesignForm): Promise<FirstDesignAnswer>;
}

export interface EngineService {
  describe(): Promise<Description>;
  /** Takes a whole document (on opening and after an edit of structure). Steps whose inputs did not change keep their values. */
  open(document: Document): Promise<Snapshot>;
  /** Sets texts by path. The engine decides whether that is an edit of value or of structure; the answer is the same as `open` of the edited document. `shown`: a hand moves the design, and slow pieces that aren't among this wait; an edit without it, or without any text, computes them. */
  set(texts: readonly (readonly [path: string, text: string])[], shown?: Shown): Promise<Snapshot>;
  /** Runs a sweep, a spread or levers of the present revision; `progress` is called with what is there, about every 50 ms, and less often where copying that many rows takes long. Resolves when done or stopped. A newer edit or a newer request for the same sweep stops it; then the last news has no rows. */
  sweep(request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void>;
  stop(sweep: string): Promise<void>;
  /** The variants that charts show, computed for the present revision: everything of them, so not to be asked for while a hand moves the design. */
  variantGhosts(): Promise<VariantGhosts>;
  /** Rows from … to − 1 of a sweep of the present revision that has been computed to its end. */
  table(view: TableView, from: number, to: number): Promise<TableAnswer>;
  /** All rows of it as pieces of a file, numbers in the units of the sheet; none while the sweep isn't computed. */
  tableFile(view: TableView, format: TableFormat): Promise<readonly (string | Uint8Array<ArrayBuffer>)[]>;
  /** A trace of the present revision and of the baseline, computed when asked for: cell.trace, such as lap.ring. `variant`: this variant, which charts show, in the place of the baseline; not to be asked for while a hand moves the design. */
  trace(path: string, variant?: string): Promise<TraceAnswer>;
  /** The factors of a fit cell for the present revision. A newer edit or request stops it. */
  fit(name: string): Promise<FitAnswer>;
  /** What was measured on the flights of a log beside what the present revision would have done. A newer edit or request stops it. */
  flown(name: string): Promise<FlownAnswer>;
  /** What the day at the field is for the present revision: pull around the lap, set-up, places, wheels, laps, stops, race. A newer request stops it. */
  dayCard(form: DayForm): Promise<DayAnswer>;
  /** The change that mends what is seen in the air, and what the model of the present revision expects of it. */
  trim(observation: string): Promise<TrimAnswer>;
  /** What would bring a result of the present revision where it is wanted. A newer edit or request stops it. */
  mends(name: string): Promise<MendsAnswer>;
  /** The designs that no other beats in everything that is wanted, for the present revision; `progress` is called on the way. A newer edit or request stops it. */
  best(name: string, progress: (p: BestProgress) => void): Promise<BestAnswer>;
  /** Ends that search with what it has found so far. */
  haltBest(name: string): Promise<void>;
  /** What a bench tells of the present revision: what is weighed, where the CG comes to lie, what is to be weighed next. */
  weighing(name: string): Promise<WeighingAnswer>;
  /** What is laid on the work at full size, of the present revision. */
  templates(): Promise<readonly PlacedTemplate[]>;
  /** For each of these choices: mass of all parts made of it with each of its options, kg; none where no part is made of it. */
  madeOf(choices: readonly string[]): Promise<readonly (readonly number[])[]>;
  /** What the parts cell of this name lacks of the things that are often forgotten. */
  forgotten(parts: string): Promise<readonly ForgottenThing[]>;
  /** How the CG that a piece has found stands to the table, and what the table may lack. */
  reconcile(found: string): Promise<Reconciliation>;
  /** Questions that can be put on any design, in the order of the builder's year. */
  studies(): Promise<readonly StudyTold[]>;
  /** Lessons that can be put on any design as a study can; each has a question that is guessed first. */
  lessons(): Promise<readonly StudyTold[]>;
  /** The open design with a study or a lesson on it as one more sheet, and what that adds; nothing is changed. `answers`: pick → choice. */
  placeStudy(name: string, answers: Readonly<Record<string, string>>): Promise<StudyAnswer>;
  /** What a chart of the number at a path can be drawn against. */
  chartOffer(of: string): Promise<ChartOffer>;
  /** The open design with a chart and its trial series; nothing is changed. */
  makeChart(wish: ChartWish, place: MakingPlace): Promise<MakingAnswer>;
  /** The open design with a variable in place of the number that is typed at a path; nothing is changed. */
  makeVariable(path: string, place: MakingPlace): Promise<MakingAnswer>;
  /** The open design with another kind in the place of a piece of the model; nothing is changed. */
  swapKind(cell: string, kind: string): Promise<MakingAnswer>;
  /** Name, text → the text as the engine reads it ("18.3 m"), or the fault's sentence; for a form that checks before it commits. */
  check(path: string, text: string): Promise<Checked>;
}
