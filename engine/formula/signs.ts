import type { ArithmeticSign, ComparisonSign } from './expression';

/** Signs as they may be typed, and as they are written. A power has a sign of its own in the grammar. */
export const ARITHMETIC_SIGNS: Readonly<Record<string, Exclude<ArithmeticSign, '^'>>> = {
  '+': '+',
  '-': '−',
  '−': '−',
  '–': '−',
  '*': '×',
  '×': '×',
  '/': '÷',
  '÷': '÷',
};

export const COMPARISON_SIGNS: Readonly<Record<string, ComparisonSign>> = {
  '=': '=',
  '≠': '≠',
  '!=': '≠',
  '<': '<',
  '>': '>',
  '≤': '≤',
  '<=': '≤',
  '≥': '≥',
  '>=': '≥',
};
