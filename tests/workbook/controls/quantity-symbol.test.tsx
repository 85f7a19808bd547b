import { expect, test } from 'vitest';
import { QuantitySymbol } from '../../../workbook/controls/quantity-symbol';
import { openPage } from '../drawing/page';

test.each([
  ['T/mg', '<i>T<wbr>/mg</i>'],
  ['T_1/mg', '<i>T</i><sub>1</sub><i><wbr>/mg</i>'],
  ['θ_1', '<i>θ</i><sub>1</sub>'],
])('%s may go on in a second line before what it is over', (of, written) => {
  const page = openPage();
  page.show(<QuantitySymbol of={of} />);
  expect(page.body.querySelector('.symbol')!.innerHTML).toBe(written);
});
