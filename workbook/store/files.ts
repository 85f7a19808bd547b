/** Ending of a design's file. */
export const FILE_ENDING = '.tetherwright.json';

/** File name from a design's title: small letters, digits and hyphens. */
export function fileName(title: string, ending = FILE_ENDING): string {
  const words = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return `${words || 'sheet'}${ending}`;
}

/** Hands a text to the browser as a file to save. */
export const saveText = (text: string, name: string, type = 'application/json'): void => saveFile([text], name, type);

/** Hands the pieces of a file to the browser to save. */
export function saveFile(pieces: readonly BlobPart[], name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([...pieces], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has taken the file over by the next turn of its loop; a minute is generous on a slow phone.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
