import { chapterFile, chapterMarkdown } from './markdown';
import { makeReference } from './reference';

/** The text copy: file name → text, with a list of all of them first. */
export function referenceFiles(): ReadonlyMap<string, string> {
  const chapters = makeReference();
  const list = chapters.map((chapter) => `- [${chapter.title}](${chapterFile(chapter)})`);
  const first = [
    '# Reference',
    'Made from the declarations in `engine/` by `npm run reference`. “Reference” at the top of the page shows the same.',
    list.join('\n'),
  ];
  return new Map([
    ['README.md', `${first.join('\n\n')}\n`],
    ...chapters.map((chapter) => [chapterFile(chapter), chapterMarkdown(chapter)] as const),
  ]);
}
