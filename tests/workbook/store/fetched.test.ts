import { expect, test } from 'vitest';
import { fetched } from '../../../workbook/store/fetched';

test('what is fetched when it is asked for first says what to do where it can not be', async () => {
  expect(await fetched(async () => 7)).toBe(7);
  const failing = fetched(() => Promise.reject(new TypeError('Failed to fetch dynamically imported module')));
  await expect(failing).rejects.toThrow(
    'This part of the program is fetched when it is asked for first, and it could not be: there is no connection, and the page does not stand in this browser for use without one yet. Connect, open the page once more, and do it again. The design is as it was.',
  );
});
