import { HighlightStyle, LanguageSupport, LRLanguage, syntaxHighlighting } from '@codemirror/language';
import { tags } from '@lezer/highlight';
import { formulaParser } from '../../engine/index';

/** The engine's own grammar, so that a text looks as it will be read. */
const formulaLanguage = LRLanguage.define({ name: 'formula', parser: formulaParser });

/** Classes only: what they look like stands in the theme. */
const looks = HighlightStyle.define([
  { tag: tags.number, class: 'formula-number' },
  { tag: tags.unit, class: 'formula-unit' },
  { tag: tags.variableName, class: 'formula-name' },
  { tag: tags.function(tags.variableName), class: 'formula-function' },
  { tag: [tags.arithmeticOperator, tags.compareOperator, tags.controlOperator], class: 'formula-sign' },
  { tag: [tags.logicOperator, tags.controlKeyword], class: 'formula-word' },
]);

export const formulaText = new LanguageSupport(formulaLanguage, syntaxHighlighting(looks));
