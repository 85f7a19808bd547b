import { styleString } from '../theme/style-string';

/** What stands at the foot of every page of a printed chapter, as a rule of a style sheet. */
export const chapterRule = (title: string): string =>
  `@page { @bottom-left { content: ${styleString(`Tetherwright, reference: ${title}`)}; } ` +
  `@bottom-right { content: "page " counter(page) " of " counter(pages); } }`;
