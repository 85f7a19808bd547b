import type { AboutWord } from './about';

/** What a word is, as it's shown: the word, what it is, what it does. */
export function saidOf({ word, is, doc }: AboutWord): HTMLElement {
  const box = document.createElement('div');
  box.className = 'editor-about';
  const heading = document.createElement('b');
  heading.textContent = word;
  box.append(heading, ` ${sentenceOf({ word, is, doc }, false)}`);
  return box;
}

/** The same to be heard. */
export function sentenceOf({ word, is, doc }: AboutWord, withWord = true): string {
  return [...(withWord ? [`${word}:`] : []), is, doc].filter((piece) => piece !== '').join(' ');
}
