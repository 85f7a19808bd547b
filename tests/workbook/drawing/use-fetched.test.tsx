import { expect, test, vi } from 'vitest';
import { useFetched } from '../../../workbook/drawing/index';
import { openPage } from './page';

test('what somebody else has fetched after it was missed is drawn all the same', async () => {
  let here: string | undefined;
  const fetch = async (): Promise<void> => {
    here ??= 'a ring';
  };
  const Picture = () => <p>{useFetched(() => here, fetch) ?? 'a place'}</p>;
  const page = openPage();
  page.show(<Picture />);
  expect(page.body.textContent).toBe('a place');
  // Before what follows a drawing has run.
  await fetch();
  await vi.waitFor(() => expect(page.body.textContent).toBe('a ring'));
});
