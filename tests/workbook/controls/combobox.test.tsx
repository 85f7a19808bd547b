import { beforeEach, describe, expect, test, vi } from 'vitest';
import { Combobox, type PickOption } from '../../../workbook/controls/pick/index';
import { openPage, type Page } from '../drawing/page';

const options: readonly PickOption[] = [
  { value: 'wing.span', title: 'Span', group: 'Wing' },
  { value: 'wing.area', title: 'Area', group: 'Wing' },
  { value: 'tail.area', title: 'Area', group: 'Tail' },
];
const onPick = vi.fn();
let page: Page;

beforeEach(() => {
  onPick.mockReset();
  // The light page scrolls nothing and selects no text.
  page = openPage();
  const { prototype } = (globalThis.window as unknown as { HTMLElement: { prototype: object } }).HTMLElement;
  Object.assign(prototype, { scrollIntoView() {}, select() {} });
  page.show(<Combobox id="what" value="tail.area" options={options} placeholder="none" onPick={onPick} />);
});

const field = (): HTMLInputElement => page.body.querySelector('input')!;
const shown = (): readonly string[] =>
  [...page.body.querySelectorAll('[role="option"]')].map((each) => each.getAttribute('data-value')!);
const active = (): string | undefined => {
  const id = field().getAttribute('aria-activedescendant');
  return id === null ? undefined : page.body.querySelector(`[id="${id}"]`)!.getAttribute('data-value')!;
};
const nextFrame = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 5));
async function send(event: string, more: object = {}): Promise<Event> {
  const sent = Object.assign(new window.Event(event, { bubbles: true, cancelable: true }), more);
  field().dispatchEvent(sent);
  await nextFrame();
  return sent;
}
const press = (key: string, more: object = {}): Promise<Event> => send('keydown', { key, ...more });
async function type(text: string): Promise<void> {
  field().value = text;
  await send('input');
}

describe('a field with a list', () => {
  test('shows the title of what is picked, and is closed', () => {
    expect(field().value).toBe('Area');
    expect(field().getAttribute('aria-expanded')).toBe('false');
    expect(shown()).toEqual([]);
  });

  test('says which place it sets, and that what stands there is at fault', () => {
    page.show(
      <Combobox id="what" path="wing.area" invalid options={options} placeholder="area (not there)" onPick={onPick} />,
    );
    expect(field().getAttribute('data-path')).toBe('wing.area');
    expect(field().getAttribute('aria-invalid')).toBe('true');
    expect(field().getAttribute('placeholder')).toBe('area (not there)');
  });

  test('a press opens it at what is picked', async () => {
    await send('click');
    expect(field().getAttribute('aria-expanded')).toBe('true');
    expect(shown()).toEqual(['wing.span', 'wing.area', 'tail.area']);
    expect(active()).toBe('tail.area');
    expect(page.body.querySelector('[role="listbox"]')!.id).toBe(field().getAttribute('aria-controls'));
  });

  test('typing narrows it, arrows go around it, Enter takes one', async () => {
    await type('area');
    expect(shown()).toEqual(['wing.area', 'tail.area']);
    expect(active()).toBe('wing.area');
    await press('ArrowUp');
    expect(active()).toBe('tail.area');
    await press('ArrowDown');
    expect(active()).toBe('wing.area');
    const enter = await press('Enter');
    expect(enter.defaultPrevented).toBe(true);
    expect(onPick.mock.calls).toEqual([['wing.area']]);
    expect(field().getAttribute('aria-expanded')).toBe('false');
  });

  test('the options of a group stand in it, under its title', async () => {
    await type('area');
    const groups = [...page.body.querySelectorAll('[role="group"]')].map((group) => [
      page.body.querySelector(`[id="${group.getAttribute('aria-labelledby')}"]`)!.textContent,
      group.querySelectorAll('[role="option"]').length,
    ]);
    expect(groups).toEqual([
      ['Wing', 1],
      ['Tail', 1],
    ]);
  });

  test('Escape closes it and takes nothing; with the list closed it is left to what is around', async () => {
    await type('wing');
    expect((await press('Escape')).defaultPrevented).toBe(true);
    expect(field().value).toBe('Area');
    expect(shown()).toEqual([]);
    expect((await press('Escape')).defaultPrevented).toBe(false);
    expect(onPick).not.toHaveBeenCalled();
  });

  test('what fits nothing is said, and Enter takes nothing', async () => {
    await type('rudder');
    expect(page.body.querySelector('[role="status"]')!.textContent).toBe('Nothing fits.');
    await press('Enter');
    expect(onPick).not.toHaveBeenCalled();
  });

  test('Alt with the down arrow opens it at what is picked', async () => {
    await press('ArrowDown', { altKey: true });
    expect(active()).toBe('tail.area');
  });

  test('leaving it closes it once the press that took the focus away is over', async () => {
    const happens = async (name: string, at: EventTarget = document): Promise<void> => {
      at.dispatchEvent(new window.Event(name));
      await nextFrame();
    };
    const room = page.body.querySelector('.combobox')!;
    await send('click');
    await happens('pointerdown');
    await happens('focusout', room);
    expect(shown().length).toBe(3);
    await happens('pointerup');
    expect(shown()).toEqual([]);
    await send('click');
    await happens('focusout', room);
    expect(shown()).toEqual([]);
  });

  test('a finger on an option finds it there when its click comes late, though the field never had the focus', async () => {
    await send('click');
    const option = page.body.querySelector('[data-value="wing.span"]')!;
    for (const name of ['pointerdown', 'pointerup']) {
      option.dispatchEvent(new window.Event(name, { bubbles: true }));
      await nextFrame();
    }
    expect(shown().length).toBe(3);
    option.dispatchEvent(new window.Event('click', { bubbles: true }));
    expect(onPick.mock.calls).toEqual([['wing.span']]);
  });

  test('a press on an option takes it', async () => {
    await send('click');
    page.body.querySelector('[data-value="wing.span"]')!.dispatchEvent(new window.Event('click', { bubbles: true }));
    expect(onPick.mock.calls).toEqual([['wing.span']]);
  });
});
