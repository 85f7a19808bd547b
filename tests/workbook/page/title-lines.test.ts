import { expect, test } from 'vitest';
import { titleRule } from '../../../workbook/page/print/title-lines';

const head = { title: 'Marsh Harrier 35', drawn: 'A club', date: '2026-11-25', units: 'inch_pound' } as const;

test('the title block of a sheet says product, design, sheet, scale, units, date, drawn and class on each of its pages', () => {
  const rule = titleRule(2, { head: { ...head, class: 'stunt' }, sheet: '2 of 6, Model', denominator: 10 });
  expect(rule).toBe(
    '@page sheet-2 { ' +
      String.raw`@bottom-left { content: "drawn with: Tetherwright" "\a " "units: inch and pound" "\a " "scale: 1 : 10" "\a " "date: 2026-11-25"; } ` +
      String.raw`@bottom-center { content: "design: Marsh Harrier 35" "\a " "class: stunt" "\a " "drawn: A club"; } ` +
      String.raw`@bottom-right { content: "sheet: 2 of 6, Model" "\a " "page " counter(page) " of " counter(pages); } }`,
  );
});

test('an invented design says so, and what is not filled in is a dash', () => {
  const rule = titleRule(1, {
    head: { ...head, invented: true, drawn: '', units: 'metric' },
    sheet: '1 of 1, Decide',
    denominator: undefined,
  });
  expect(rule).toContain('"Invented: no such model, maker or club exists."');
  expect(rule).toContain('"drawn: –"');
  expect(rule).toContain('"class: –"');
  expect(rule).toContain('"units: metric"');
  expect(rule).toContain('"scale: no drawing"');
});

test('a title ends no rule, whatever signs it holds', () => {
  const rule = titleRule(1, { head: { ...head, title: 'A "7" \\ x\ny' }, sheet: '1 of 1, Decide', denominator: 5 });
  expect(rule).toContain(String.raw`"design: A \22 7\22  \5c  x\a y"`);
});
