import type { TakenIn } from './keep/index';

/** What became of the designs of a file, as a title and sentences under it. `of`: how many the file has. */
export function takenWords(file: string, of: number, taken: readonly TakenIn[]) {
  const count = (as: TakenIn['as']): number => taken.filter((each) => each.as === as).length;
  const kept = count('new') + count('renamed');
  const parts = [
    ...(kept > 0 ? [`${kept} ${kept === 1 ? 'is' : 'are'} now on this machine`] : []),
    ...(count('here') > 0 ? [`${count('here')} ${count('here') === 1 ? 'was' : 'were'} here already`] : []),
    ...(taken.length < of ? [`${of - taken.length} could not be kept`] : []),
  ];
  const renamed = taken.filter(({ as }) => as === 'renamed');
  return {
    ...(taken.length === of ? { good: true as const } : {}),
    title: `${file}, ${of === 1 ? 'one design' : `${of} designs`}: ${parts.join(', ')}. Nothing was overwritten; “Open” lists them.`,
    sentences: renamed.map(
      ({ title, document }) =>
        `“${title || 'Untitled design'}” of the file differs from another of that title, and is kept as “${document.title}”.`,
    ),
  };
}
