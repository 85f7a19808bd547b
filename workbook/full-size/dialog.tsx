import './style.css';
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { PlacedTemplate } from '../../engine/index';
import { useSheet } from '../store/context';
import { fetched } from '../store/fetched';
import { fileName, saveFile } from '../store/files';
import { arrange } from './arrange';
import { CAUTION, pagesOf } from './pages';
import { Preview } from './preview';
import { PAPERS, type Paper, tile } from './tiles';

const NONE =
  'Nothing here gives a template yet. They come from pieces of the model: ribs from “Wing”, bearers from the engine, holes from “Leadouts”, gear wire from “Ground and gear”, outlines from “Tank”, arms from “Control linkage”. Add one of these pieces.';

/** Templates of the pieces at full size, over as many sheets of paper as they need, as a PDF. */
export function FullSizeDialog({ onClose }: { onClose(): void }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  const templates = useSignal<readonly PlacedTemplate[] | undefined>(undefined);
  const out = useSignal<ReadonlySet<string>>(new Set());
  const { title, date, units } = sheet.document.value;
  const paper = useSignal<Paper>(units === 'inch_pound' ? 'letter' : 'a4');
  const said = useSignal('');
  useEffect(() => {
    dialog.current?.showModal();
    sheet.settle();
    sheet.templates().then(
      (told) => {
        templates.value = told;
      },
      (error: unknown) => {
        said.value = error instanceof Error ? error.message : String(error);
      },
    );
  }, []);
  const all = templates.value ?? [];
  const wanted = all.filter((each) => !out.value.has(keyOf(each)));
  const pages = pagesOf(wanted, paper.value, { design: title, date, units });
  const save = async (): Promise<void> => {
    said.value = 'Working.';
    try {
      const { templatesPdf } = await fetched(() => import('./pdf'));
      const name = `${title || 'Untitled design'} full size`;
      saveFile([await templatesPdf(pages, { title: name, date })], fileName(name, '.pdf'), 'application/pdf');
      said.value = 'Saved as PDF.';
    } catch (error) {
      said.value = error instanceof Error ? error.message : String(error);
    }
  };
  return (
    <dialog ref={dialog} class="open-dialog full-size-dialog" aria-labelledby="full-size-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="full-size-title">Templates at full size</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {templates.value?.length === 0 && <p>{NONE}</p>}
      {all.length > 0 && (
        <>
          <fieldset class="full-size-paper">
            <legend>Paper</legend>
            {(Object.keys(PAPERS) as Paper[]).map((each) => (
              <label key={each}>
                <input
                  type="radio"
                  name="full-size-paper"
                  checked={paper.value === each}
                  onChange={() => {
                    paper.value = each;
                  }}
                />
                {PAPERS[each].title}
              </label>
            ))}
          </fieldset>
          <fieldset>
            <legend>Templates</legend>
            <div class="full-size-list">
              {all.map((each) => {
                const arranged = arrange(each, units);
                const tiling = tile(arranged, paper.value);
                return (
                  <div key={keyOf(each)}>
                    <label>
                      <input
                        type="checkbox"
                        checked={!out.value.has(keyOf(each))}
                        onChange={({ currentTarget }) => {
                          const next = new Set(out.value);
                          if (currentTarget.checked) next.delete(keyOf(each));
                          else next.add(keyOf(each));
                          out.value = next;
                        }}
                      />
                      {each.title}: {sheets(tiling.tiles.length)}
                    </label>
                    <Preview arranged={arranged} tiling={tiling} />
                  </div>
                );
              })}
            </div>
          </fieldset>
          <p>{CAUTION}</p>
          <p class="commands">
            <button type="button" class="word" disabled={pages.length === 0} onClick={() => void save()}>
              Save {sheets(pages.length)} as PDF
            </button>
          </p>
        </>
      )}
      <p role="status">{said.value}</p>
    </dialog>
  );
}

const keyOf = ({ cell, title }: PlacedTemplate): string => `${cell} ${title}`;
const sheets = (count: number): string => (count === 1 ? '1\u00a0sheet' : `${count}\u00a0sheets`);
