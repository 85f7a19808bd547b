import { useSignal } from '@preact/signals';
import { MOST_ON_CHARTS, type NameInfo, textAt, type Variant } from '../../../engine/index';
import { along } from '../../controls/along';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';
import { AddFrom, Labelled, Pick } from '../shared/pick';
import { Tick } from '../shared/tick';
import { Typed } from '../shared/typed';
import { nameOptions } from '../shared/wanted';
import { titleAt } from './words';

/** What can be done with one variant, and under it what it changes. */
export function OneVariant({ id, variant }: { id: string; variant: Variant }) {
  const sheet = useSheet();
  const designs = useDesigns();
  const { name } = variant;
  const of = <span class="unseen"> {name}</span>;
  return (
    <fieldset class="set-up-axis variant" data-variant={name}>
      <legend>{name}</legend>
      <p class="variant-commands">
        <button type="button" class="word" {...along(true)} onClick={() => sheet.keepVariant(name)}>
          Keep: set the design to it{of}
        </button>
        <button type="button" class="word" {...along()} onClick={() => sheet.baselineFromVariant(name)}>
          Make it the baseline{of}
        </button>
        <button type="button" class="word" {...along()} onClick={() => void sheet.copyVariant(name)}>
          Copy{of}
        </button>
        {designs && (
          <button
            type="button"
            class="word"
            {...along()}
            onClick={() => {
              designs.copying.value = name;
            }}
          >
            Copy to a design{of}
          </button>
        )}
        <button type="button" class="word quiet" {...along()} onClick={() => sheet.removeVariant(name)}>
          Remove{of}
        </button>
        <Tick on={variant.on_charts === true} onChange={(on) => sheet.chartVariant(name, on)}>
          On the charts{of}
        </Tick>
      </p>
      <details class="set-up">
        <summary {...along()}>Edit{of}</summary>
        <Edit id={id} variant={variant} />
      </details>
    </fieldset>
  );
}

function Edit({ id, variant }: { id: string; variant: Variant }) {
  const sheet = useSheet();
  const refused = useSignal('');
  const { name, changes } = variant;
  const paths = Object.keys(changes);
  return (
    <>
      <div class="set-up-fields">
        <Labelled id={`${id}-name`} label="Called">
          <Typed
            id={`${id}-name`}
            text={name}
            wrong={refused.value === '' ? undefined : `${id}-refused`}
            onDone={(to) => {
              refused.value = sheet.renameVariant(name, to) ?? '';
            }}
          />
        </Labelled>
      </div>
      {refused.value !== '' && (
        <p class="fault-flag fault" id={`${id}-refused`}>
          {refused.value}
        </p>
      )}
      {paths.map((path, k) => (
        <Changed key={path} id={`${id}-change${k}`} variant={variant} path={path} />
      ))}
      <div class="set-up-fields">
        <AddFrom
          id={`${id}-add`}
          label={paths.length === 0 ? 'What it changes' : 'And what else it changes'}
          options={nameOptions(sheet, isChangeable).filter(({ value }) => !(value in changes))}
          onAdd={(path) => sheet.editVariant(name, path, textAt(sheet.document.peek(), path) ?? '')}
        />
      </div>
      <p class="aside">
        Everything else is as the design has it. At most {MOST_ON_CHARTS} variants stand on the charts.
      </p>
    </>
  );
}

function Changed({ id, variant, path }: { id: string; variant: Variant; path: string }) {
  const sheet = useSheet();
  const { name, changes } = variant;
  const text = changes[path]!;
  const info = sheet.name(path);
  const title = titleAt(sheet, path);
  const put = (typed: string): void => sheet.editVariant(name, path, typed);
  return (
    <div class="set-up-fields" data-variant-change={path}>
      {info?.options ? (
        <Pick
          id={id}
          label={title}
          value={text}
          options={info.options.map((value) => ({
            value,
            title: sheet.optionTitle(path, value) ?? value.replaceAll('_', ' '),
          }))}
          onPick={put}
        />
      ) : (
        <div>
          <span class="set-up-word" aria-hidden="true">
            {title}
          </span>
          <TextEntry
            path={path}
            label={`${title} in ${name}`}
            text={text}
            shown={text}
            placeholder="blank"
            secondary
            onCommit={put}
            onUndoBeyond={sheet.undo}
          />
        </div>
      )}
      <button type="button" class="word quiet" onClick={() => sheet.editVariant(name, path, undefined)}>
        Remove
        <span class="unseen">
          {' '}
          {title} from {name}
        </span>
      </button>
    </div>
  );
}

const CHANGED: ReadonlySet<NameInfo['kind']> = new Set(['variable', 'choice', 'field', 'part', 'formula']);
const isChangeable = (info: NameInfo): boolean => info.settable && CHANGED.has(info.kind);
