import { FILE_ENDING, fileName } from '../store/files';

/** What the system's own sheet for sharing may be asked. */
type Sharer = Pick<Navigator, 'share' | 'canShare'>;

/**
 * The design as a file that the system takes for sharing; undefined where it takes none. Some systems take no JSON: the same text then goes
 * as a text file, which opens as well.
 */
export function fileToShare(text: string, title: string, sharer: Partial<Sharer> = navigator): File | undefined {
  if (!sharer.share || !sharer.canShare) return undefined;
  const files = [
    new File([text], fileName(title), { type: 'application/json' }),
    new File([text], fileName(title, FILE_ENDING.replace(/json$/, 'txt')), { type: 'text/plain' }),
  ];
  return files.find((file) => sharer.canShare!({ files: [file] }));
}
