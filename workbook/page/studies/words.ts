import type { StudyList } from '../../store/studies';

/** What the page says of studies and of lessons. */
export const studyWords: Readonly<
  Record<StudyList, { readonly open: string; readonly about: string; readonly back: string }>
> = {
  studies: { open: 'Add a study', about: '', back: 'All studies' },
  lessons: {
    open: 'Lessons',
    about:
      'Each takes ten minutes: a question is guessed first, then your model answers it. For twelve-year-olds and up, alone or as a class on one machine.',
    back: 'All lessons',
  },
};
