/** The formula language by example; a test reads every example that is a formula. */
export const formulaSymbols: readonly (readonly [written: string, means: string])[] = [
  ['18.3 m', 'a quantity: number and unit'],
  ['1 3/32 in', 'a whole number and a fraction with a unit'],
  ['3 m/s', 'a speed: the longest unit written without spaces is taken'],
  ['a + b, a − b', 'sum and difference, of one kind'],
  ['a × b, a * b', 'product'],
  ['a ÷ b, a / b', 'quotient'],
  ['a^2, a²', 'power; binds before a sign: −a² is −(a²)'],
  ['(a + b) × c', 'parentheses first'],
  ['pi, π', '3.14159…'],
  ['a < b, a ≤ b, a = b, a ≠ b, a ≥ b, a > b', 'comparisons; typed also <=, >=, !='],
  ['not a = b and c < d or e > f', 'logic; not before and, and before or; also ¬, ∧, ∨'],
  ['a > b ? c : d', 'c where a is above b, else d'],
  ['tail_stock = balsa ? 1 mm : 2 mm', 'an option of a choice compared by its name'],
  ['flight.pull', 'a result of a block'],
];
