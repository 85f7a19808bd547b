import '../theme/index.css';
import './reference.css';
import { wrap } from 'comlink';
import { render } from 'preact';
import type { Chapter, ReferenceService } from '../../engine/index';
import { watchPaper } from '../page/paper';
import { watchRoom } from '../page/room';
import { watchAddress } from './address';
import { placesOf } from './places';
import { ReferencePage } from './reference-page';

/** The engine tells its own reference, so that the page says what this engine computes and no other. */
async function readReference(): Promise<readonly Chapter[]> {
  const worker = new Worker(new URL('../../engine/worker.ts', import.meta.url), { type: 'module', name: 'engine' });
  const failed = new Promise<never>((_, reject) => {
    worker.addEventListener('error', () => reject(new Error('The engine could not be started.')));
  });
  try {
    return await Promise.race([wrap<ReferenceService>(worker).reference(), failed]);
  } finally {
    worker.terminate();
  }
}

const paper = watchPaper();

async function start(): Promise<void> {
  const app = document.getElementById('app')!;
  try {
    const chapters = await readReference();
    const going = watchAddress(placesOf(chapters));
    render(<ReferencePage chapters={chapters} going={going} paper={paper} room={watchRoom()} />, app);
  } catch (error) {
    render(<p role="alert">{error instanceof Error ? error.message : String(error)} Load the page again.</p>, app);
  }
}

void start();
