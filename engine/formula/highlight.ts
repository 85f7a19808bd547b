import { styleTags, tags } from '@lezer/highlight';

/** What each part of a formula is, for the editor's colours. */
export const highlighting = styleTags({
  'Number Fraction MixedNumber': tags.number,
  Unit: tags.unit,
  UnknownUnit: tags.invalid,
  Name: tags.variableName,
  Function: tags.function(tags.variableName),
  'PlusSign MinusSign TimesSign OverSign PowerSign Superscript': tags.arithmeticOperator,
  CompareSign: tags.compareOperator,
  'AndSign OrSign NotSign': tags.logicOperator,
  'If Then Else': tags.controlKeyword,
  '"?" ":"': tags.controlOperator,
  '( )': tags.paren,
  '","': tags.separator,
});
