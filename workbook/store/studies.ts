import { type Signal, signal } from '@preact/signals';
import type { EngineService, StudyAnswer, StudyTold } from '../../engine/index';
import type { Editor } from './editor';

type Answers = Readonly<Record<string, string>>;

export type StudyList = 'studies' | 'lessons';

/** Studies that can be put on the open design. */
export interface Studies {
  /** The list of them that is shown, or that of lessons. */
  readonly choosingStudy: Signal<StudyList | undefined>;
  studyList(list: StudyList): Promise<readonly StudyTold[]>;
  /** What a study would add to the design as it stands. */
  previewStudy(name: string, answers: Answers): Promise<StudyAnswer>;
  /** Puts it on the design in one step, and gives the sentence that says why not where it can't be. */
  putStudy(study: StudyTold, answers: Answers): Promise<string | undefined>;
}

export interface StudiesPorts {
  readonly engine: Pick<EngineService, StudyList | 'placeStudy'>;
  readonly editor: Editor;
  show(sheet: string): void;
}

/** An edit that comes between the asking and the answer asks again, so often at most. */
const MOST_TRIES = 3;

export function createStudies({ engine, editor, show }: StudiesPorts): Studies {
  const { document } = editor;
  return {
    choosingStudy: signal(undefined),
    studyList: (list) => engine[list](),
    previewStudy(name, answers) {
      editor.settle();
      return engine.placeStudy(name, answers);
    },
    async putStudy({ name, question }, answers) {
      for (let tries = 1; ; tries++) {
        editor.settle();
        const before = document.peek();
        const answer = await engine.placeStudy(name, answers);
        if (!answer.ok) return answer.message;
        if (document.peek() !== before && tries < MOST_TRIES) continue;
        editor.change([{ change: 'design', document: answer.document }], `the sheet “${question}”`);
        show(answer.sheet);
        return undefined;
      }
    },
  };
}
