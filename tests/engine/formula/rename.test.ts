import { expect, test } from 'vitest';
import { renameInFormula } from '../../../engine/formula/index';

test.each([
  ['flight.pull - 2*flight.pull', 'flight', 'test_flight', 'test_flight.pull - 2*test_flight.pull'],
  ['flight.pull', 'flight.pull', 'flight.tension', 'flight.tension'],
  ['parts.fin.mass + parts.fin_post.mass', 'parts.fin', 'parts.rudder', 'parts.rudder.mass + parts.fin_post.mass'],
  ['  reach /  2 ', 'reach', 'r', '  r /  2 '],
  ['+reach + -reach', 'reach', 'r', '+r + -r'],
  ['(reach)^2 + max(reach, 3 ft)', 'reach', 'arm', '(arm)^2 + max(arm, 3 ft)'],
  ['m + 3 m', 'm', 'mass', 'mass + 3 m'],
  ['s + 3 m/s + 3 m / s', 's', 'span', 'span + 3 m/s + 3 m / span'],
  ['3 m/span', 'span', 's', '3 m/ s'],
  ['3 m/span + span', 'span', 's2', '3 m/ s2 +  s2'],
  ['min + min(min, 2)', 'min', 'least', 'least + min(least, 2)'],
  ['flight_2.pull + preflight.pull', 'flight', 'x', 'flight_2.pull + preflight.pull'],
  ['a < b ? a : not (b = a) ? a : b', 'a', 'longer', 'longer < b ? longer : not (b = longer) ? longer : b'],
  ['reach +', 'reach', 'r', 'reach +'],
  ['18.3 m', 'm', 'x', '18.3 m'],
])('%s with %s as %s', (text, from, to, expected) => {
  expect(renameInFormula(text, from, to)).toBe(expected);
});

test('and back again', () => {
  const text = 'flight.pull × (2*flight.height) ≥ 3 N·m and flight.speed<9 m/s';
  expect(renameInFormula(renameInFormula(text, 'flight', 'a_longer_name'), 'a_longer_name', 'flight')).toBe(text);
});
