/**
 * Colours of the sheet on each paper, for what is drawn by code. The same stand in tokens.css, where they follow the paper
 * that is chosen; a test holds the two together.
 */
export const papers = {
  /** Ink on warm paper. */
  light: {
    ink: '#22313a',
    muted: '#5f6a70',
    paper: '#fbf8f0',
    desk: '#dfdbd0',
    rule: '#b9b3a4',
    hairline: '#dcd6c8',
    limit: '#a8322a',
    settled: '#3c7350',
    focus: '#27598c',
  },
  /** Pale lines on deep blue. */
  blueprint: {
    ink: '#e9f0f7',
    muted: '#a9bfd4',
    paper: '#15375f',
    desk: '#0e2542',
    rule: '#5d7fa3',
    hairline: '#2f527c',
    limit: '#ffb3a6',
    settled: '#a3dfb8',
    focus: '#ffd98a',
  },
} as const;

/** What stands in where no sheet surrounds a drawing. */
export const tokens = papers.light;

/**
 * Order of the lines in a chart, the same on both papers. `text` is the tone for words, darker where the line's own colour is too
 * pale to read; `blueprint` serves for both.
 */
export const series = [
  { name: 'blue', line: '#27598c', text: '#27598c', blueprint: '#94c6ff', dash: '' },
  { name: 'ochre', line: '#a8741a', text: '#8a5d10', blueprint: '#f2c264', dash: '7 3' },
  { name: 'green', line: '#3c7350', text: '#3c7350', blueprint: '#8fdcaa', dash: '2 2.5' },
  { name: 'violet', line: '#6a4a8c', text: '#6a4a8c', blueprint: '#d2b4f5', dash: '9 3 2 3' },
  { name: 'plum', line: '#9a3a78', text: '#9a3a78', blueprint: '#f5a8d8', dash: '12 3 2 3 2 3' },
] as const;

export const fontFamily = "B612, 'DejaVu Sans', sans-serif";

/** Of a printed figure, whatever paper lies on the screen. */
export const WHITE = '#ffffff';
export const BLACK = '#000000';
