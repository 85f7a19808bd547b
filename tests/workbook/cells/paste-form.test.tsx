import { expect, test, vi } from 'vitest';
import { PasteFaults } from '../../../workbook/cells/shared/paste-faults';
import { PasteForm } from '../../../workbook/cells/shared/paste-form';
import { openPage } from '../drawing/page';

test('twenty faults of a pasted text are told, and how many more there are', () => {
  const page = openPage();
  page.show(<PasteFaults told={Array.from({ length: 22 }, (_, k) => `Line ${k + 1} is wrong.`)} />);
  expect(page.body.querySelectorAll('li')).toHaveLength(20);
  expect(page.body.querySelector('.aside')?.textContent).toBe('2 more.');
});

test('another text is read anew: what was chosen for the one before is forgotten', async () => {
  const page = openPage();
  const onOther = vi.fn();
  page.show(
    <PasteForm id="paste" class="paste" title="Paste" about="One part a line." onOther={onOther}>
      {({ text }) => <p data-taken>{text}</p>}
    </PasteForm>,
  );
  const entry = page.body.querySelector('textarea')!;
  entry.value = 'part,mass';
  entry.dispatchEvent(new (window as unknown as { Event: typeof Event }).Event('input'));
  await vi.waitFor(() => expect(page.body.querySelector('[data-taken]')?.textContent).toBe('part,mass'));
  expect(onOther).toHaveBeenCalledTimes(1);
});
