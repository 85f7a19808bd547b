/** Colours of the sheet, for what is drawn by code. The same names stand in tokens.css; a test holds the two together. */
export const tokens = {
  ink: '#22313a',
  muted: '#5f6a70',
  paper: '#fbf8f0',
  desk: '#dfdbd0',
  rule: '#b9b3a4',
  hairline: '#dcd6c8',
  limit: '#a8322a',
  settled: '#3c7350',
  focus: '#27598c',
} as const;

/** Order of the lines in a chart. `text` is the darker tone for words where the line's own colour is too pale to read. */
export const series = [
  { name: 'blue', line: '#27598c', text: '#27598c', dash: '' },
  { name: 'ochre', line: '#a8741a', text: '#8a5d10', dash: '7 3' },
  { name: 'green', line: '#3c7350', text: '#3c7350', dash: '2 2.5' },
  { name: 'violet', line: '#6a4a8c', text: '#6a4a8c', dash: '9 3 2 3' },
  { name: 'grey', line: '#5f6a70', text: '#5f6a70', dash: '1 3' },
] as const;

export const fontFamily = "B612, 'DejaVu Sans', sans-serif";
