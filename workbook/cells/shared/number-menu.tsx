import { textAt } from '../../../engine/index';
import { goTo } from '../../controls/go-to';
import { type Command, type CommandLink, Menu } from '../../controls/menu';
import { REFERENCE_PAGE, referenceAddress } from '../../controls/reference-link';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';

interface NumberMenuProps {
  readonly path: string;
  /** What people call it. */
  readonly title: string;
  /** Its place in the reference. */
  readonly to?: string;
  /** Tab enters the numbers here. */
  readonly enters?: boolean;
}

/** What can be made of one number, on its own title. */
export function NumberMenu({ path, title, to, enters }: NumberMenuProps) {
  const sheet = useSheet();
  const meaning: readonly CommandLink[] =
    to === undefined ? [] : [{ words: 'What it means', href: referenceAddress(to), target: REFERENCE_PAGE }];
  return (
    <Menu
      along={enters ? 'enters' : 'word'}
      class="word row-word number-word"
      label={`${title}: commands`}
      commands={() => [...makingCommands(sheet, path, title), ...meaning]}
    >
      {title}
    </Menu>
  );
}

/** What can be made of the number at a path. */
export function makingCommands(sheet: Sheet, path: string, title: string): readonly Command[] {
  const info = sheet.name(path);
  const chart: Command = {
    words: 'Make a chart of this',
    run: () => {
      sheet.charting.value = path;
    },
  };
  const variable: Command = {
    words: 'Make this a variable',
    run: () =>
      void sheet.makeVariable(path, title).then((place) => {
        if (place) goTo(sheet, place);
      }),
  };
  const slides = info?.settable && !info.options && info.kind !== 'variable' && !readsVariable(sheet, path);
  return slides ? [chart, variable] : [chart];
}

/** A variable stands there already. */
function readsVariable(sheet: Sheet, path: string): boolean {
  const text = textAt(sheet.document.peek(), path)?.trim() ?? '';
  return sheet.name(text)?.kind === 'variable';
}
