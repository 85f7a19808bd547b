import text from '../../../data/class_rules.csv?raw';
import { FORCE, LENGTH, MASS, ONE, VOLUME } from '../../units/index';
import { libraryTable } from '../library-table';

const longest = { dimension: LENGTH, unit: 'm', tradeUnit: 'ft', mayBeBlank: true } as const;

export const readClassRules = (file: string, content: string) =>
  libraryTable(
    {
      name: 'class_rules',
      title: 'Class rules',
      one: 'class rule',
      doc: 'What a class asks of lines, pull test and model, as far as it was found. A choice among them gives the pull test of level flight.',
      caution:
        'Editions change and these are copies of copies: the current rule book of your national body decides, and its pull test is of the whole system.',
      feeds: 'flight',
      columns: {
        edition: { title: 'Edition', words: true },
        line_length_min: { title: 'Line length or radius, least', symbol: 'l_1', ...longest },
        line_length_max: { title: 'Line length or radius, most', symbol: 'l_2', ...longest },
        line_diameter_min: {
          title: 'Line diameter, least',
          symbol: 'd_1',
          dimension: LENGTH,
          unit: 'mm',
          tradeUnit: 'in',
          mayBeBlank: true,
        },
        test_factor: { title: 'Pull test over weight', symbol: 'k_t', dimension: ONE, unit: '', mayBeBlank: true },
        test_load: {
          title: 'Pull-test load',
          symbol: 'F_t',
          dimension: FORCE,
          unit: 'N',
          tradeUnit: 'lbf',
          mayBeBlank: true,
        },
        mass_max: { title: 'Mass, most', symbol: 'm_2', dimension: MASS, unit: 'g', tradeUnit: 'oz', mayBeBlank: true },
        displacement_max: {
          title: 'Displacement, most',
          symbol: 'v_2',
          dimension: VOLUME,
          unit: 'cm³',
          tradeUnit: 'in³',
          mayBeBlank: true,
        },
        span_max: { title: 'Span, most', symbol: 'b_2', ...longest },
      },
    },
    file,
    content,
  );

/** Limits of the classes, each with the edition that it was read in. */
export const classRules = readClassRules('class_rules.csv', text);
