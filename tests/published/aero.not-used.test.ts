import { describe, expect, it } from 'vitest';
import { copiedFiles, notUsed, rowsOf } from './aero-rows';

/* Every published row on air, mass and aerodynamics is checked, or stands in this list with the reason why not. */
describe('rows that no check uses', () => {
  it.each(notUsed.map((each) => [each.file, each.row, each.reason]))('%s: %s', (file, row, reason) => {
    expect(copiedFiles).toContain(file);
    expect(rowsOf(file)).toContain(row);
    expect(reason).toMatch(/^[A-Z].{20,}\.$/);
  });
  it('are listed once', () => {
    const names = notUsed.map((each) => `${each.file}: ${each.row}`);
    expect(new Set(names).size).toBe(names.length);
  });
  it('are fewer than those that are checked', () => {
    const all = copiedFiles.flatMap(rowsOf).length;
    expect(notUsed.length).toBeLessThan(all / 2);
  });
});
