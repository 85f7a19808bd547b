import { describe, expect, it } from 'vitest';
import { copiedFlightFiles, flightRowsOf, notUsedRows } from './flight-rows';

/* Every published row on circular flight, lines and numerics is checked, or stands in this list with the reason why not. */
describe('rows that no check uses', () => {
  it.each(notUsedRows.map((each) => [each.file, each.row, each.reason]))('%s: %s', (file, row, reason) => {
    expect(copiedFlightFiles).toContain(file);
    expect(flightRowsOf(file)).toContain(row);
    expect(reason).toMatch(/^[A-Z].{20,}\.$/);
  });

  it('are listed once', () => {
    const names = notUsedRows.map((each) => `${each.file}: ${each.row}`);
    expect(new Set(names).size).toBe(names.length);
  });

  it('have names of their own in each file', () => {
    for (const file of copiedFlightFiles)
      expect(new Set(flightRowsOf(file)).size, file).toBe(flightRowsOf(file).length);
  });
});
