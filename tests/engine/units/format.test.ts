import { describe, expect, test } from 'vitest';
import { type FormatOptions, formatNumber, formatQuantity, toSI, writeQuantity } from '../../../engine/units/index';

describe('formatNumber', () => {
  test.each<[number, string]>([
    [0, '0'],
    [-0, '0'],
    [46.04, '46.0'],
    [46, '46'],
    [-46.04, '−46.0'],
    [2.5, '2.5'],
    [18.288, '18.3'],
    [3.0567, '3.06'],
    [9.996, '10.0'],
    [999.96, '1000'],
    [0.0312, '0.0312'],
    [0.5, '0.5'],
    [0.99961, '1.00'],
    [38.099999999999994, '38.1'],
    [849.6, '850'],
    [12_345.6, '12\u202f346'],
    [250_000, '250\u202f000'],
    [9_999_999.9, '10\u202f000\u202f000'],
    [12_345_678, '1.23×10⁷'],
    [2.1e11, '2.1×10¹¹'],
    [1.8121e-5, '1.81×10⁻⁵'],
    [-2e-5, '−2×10⁻⁵'],
    [1e-18, '0'],
    [-1e-18, '0'],
    [Number.NaN, '–'],
    [Number.POSITIVE_INFINITY, '∞'],
    [Number.NEGATIVE_INFINITY, '−∞'],
  ])('%d is written %s', (value, text) => {
    expect(formatNumber(value)).toBe(text);
  });

  test.each<[number, number, string]>([
    [46.04, 2, '46'],
    [46.04, 4, '46.04'],
    [46.04, 5, '46.04'],
    [Math.PI, 6, '3.14159'],
    [0.002345678, 2, '0.0023'],
    [1234.5, 1, '1235'],
  ])('%d to %d digits is written %s', (value, significant, text) => {
    expect(formatNumber(value, significant)).toBe(text);
  });
});

describe('formatQuantity', () => {
  test.each<[number, string, FormatOptions, string]>([
    [18.288, 'm', {}, '18.3\u00a0m'],
    [18.288, 'ft', {}, '60\u00a0ft'],
    [0.0381, 'mm', {}, '38.1\u00a0mm'],
    [0.046_04, 'mm', {}, '46.0\u00a0mm'],
    [0.046_04, 'mm', { decimals: 2 }, '46.04\u00a0mm'],
    [0.021, 'g', {}, '21\u00a0g'],
    [-0.006_981, '°', {}, '−0.40°'],
    [toSI(-0.0004, '°'), '°', {}, '0°'],
    [toSI(12.3456, '°/s'), '°/s', {}, '12.3\u00a0°/s'],
    [0.1134, '%', {}, '11.3\u00a0%'],
    [toSI(0.1234, '%'), '%', {}, '0.12\u00a0%'],
    [toSI(9000.4, 'rpm'), 'rpm', {}, '9000\u00a0rpm'],
    [toSI(12.34, 'rpm'), 'rpm', {}, '12\u00a0rpm'],
    [3.0567, '', {}, '3.06'],
    [3.0567, '', { suffix: 'g' }, '3.06\u00a0g'],
    [288.15, '°C', {}, '15\u00a0°C'],
    [288.15, '°F', {}, '59\u00a0°F'],
    [5, '°C', { difference: true }, '5\u00a0°C'],
    [-5, '°F', { difference: true, sign: true }, '−9\u00a0°F'],
    [0.003, 'mm', { difference: true, sign: true }, '+3\u00a0mm'],
    [0.0030012, 'mm', { sign: true }, '+3.0\u00a0mm'],
    [-0.0002, 'mm', { sign: true, decimals: 1 }, '−0.2\u00a0mm'],
    // As fine as somebody measures or builds.
    [-0.000055214, 'mm', {}, '−0.1\u00a0mm'],
    [0.00004, 'mm', {}, '0.04\u00a0mm'],
    [0.000041234, 'mm', {}, '0\u00a0mm'],
    [-0.000041234, 'mm', {}, '0\u00a0mm'],
    [0.005274, 'mm', {}, '5.3\u00a0mm'],
    [0.000381, 'mm', {}, '0.381\u00a0mm'],
    [0.005274, 'mm', { significant: 3 }, '5.27\u00a0mm'],
    [toSI(5.2741, 'in'), 'in', {}, '5.27\u00a0in'],
    [toSI(0.0312345, 'in'), 'in', {}, '0.031\u00a0in'],
    [toSI(0.018, 'in'), 'mm', {}, '0.46\u00a0mm'],
    [toSI(-0.002124, 'in'), 'in', {}, '0\u00a0in'],
    [toSI(0.2741, 'oz'), 'oz', {}, '0.27\u00a0oz'],
    [8.7512, 'N', {}, '8.8\u00a0N'],
    [toSI(0.5512, 'lbf'), 'lbf', {}, '0.55\u00a0lbf'],
    [toSI(1.23456, 'lbf'), 'lbf', {}, '1.2\u00a0lbf'],
    [0.1234, 'N', {}, '0.12\u00a0N'],
    [1.2216, 'kg/m³', {}, '1.22\u00a0kg/m³'],
    [1.2216, 'lb/ft³', {}, '0.0763\u00a0lb/ft³'],
    [151.234, 'kg/m³', {}, '151\u00a0kg/m³'],
    [4.9312, 's', {}, '4.93\u00a0s'],
    [toSI(-0.4712, '°'), '°', {}, '−0.47°'],
    [toSI(1.2345, '°'), '°', {}, '1.2°'],
    [3.0801, '', { suffix: '× weight' }, '3.08\u00a0×\u00a0weight'],
    [toSI(12_345.6, 'rpm'), 'rpm', {}, '12\u202f346\u00a0rpm'],
    [0, 'mm', { sign: true }, '0\u00a0mm'],
    [-0.00001, 'mm', { sign: true, decimals: 1 }, '0.0\u00a0mm'],
    [1.789e-5, 'Pa·s', {}, '1.79×10⁻⁵\u00a0Pa·s'],
    [Number.NaN, 'mm', {}, '–'],
    [Number.NaN, '', { suffix: 'g' }, '–'],
    [Number.POSITIVE_INFINITY, 'N', {}, '∞\u00a0N'],
  ])('%d in %s with %o is written %s', (si, unit, options, text) => {
    expect(formatQuantity(si, unit, options)).toBe(text);
  });

  test.each<[number, string, FormatOptions, string]>([
    [toSI(0.33, '°'), '°', { ways: ['out', 'in'] }, '0.33° out'],
    [toSI(-0.33, '°'), '°', { ways: ['out', 'in'] }, '0.33° in'],
    [-0.0125, 'mm', { ways: ['behind', 'ahead'] }, '12.5\u00a0mm ahead'],
    [-0.0125, '', { suffix: '× weight', ways: ['up', 'down'] }, '0.0125\u00a0×\u00a0weight down'],
    [Number.NEGATIVE_INFINITY, 'N', { ways: ['up', 'down'] }, '∞\u00a0N down'],
    // What is shown as nothing goes no way.
    [-0.000041234, 'mm', { ways: ['behind', 'ahead'] }, '0\u00a0mm'],
    [0, '°', { ways: ['out', 'in'] }, '0°'],
    [0, '°', { ways: ['out', 'in', 'straight'] }, 'straight'],
    [-0.0000041234, 'mm', { ways: ['above', 'below', 'level with'] }, 'level with'],
    [Number.NaN, '°', { ways: ['out', 'in', 'straight'] }, '–'],
    [Number.NaN, '°', { ways: ['out', 'in'] }, '–'],
  ])('%d in %s with %o says which way: %s', (si, unit, options, text) => {
    expect(formatQuantity(si, unit, options)).toBe(text);
  });

  test('an unknown unit is refused with its name', () => {
    expect(() => formatQuantity(1, 'furlong')).toThrow(
      new RangeError('furlong is not a unit; a name from the unit table is allowed'),
    );
  });
});

describe('writeQuantity', () => {
  test.each<[number, string, string]>([
    [0.0381, 'mm', '38.1 mm'],
    [18.288, 'ft', '60 ft'],
    [toSI(-0.4, '°'), '°', '-0.4°'],
    [1.81e-5, 'Pa·s', '0.0000181 Pa·s'],
    [2.1e-8, 'm⁴', '2.1e-8 m⁴'],
    [288.15, '°C', '15 °C'],
    [2, '', '2'],
    [Number.NaN, 'mm', ''],
  ])('%d in %s is typed %s', (si, unit, text) => {
    expect(writeQuantity(si, unit)).toBe(text);
  });
});
