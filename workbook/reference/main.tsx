import '../theme/index.css';
import './reference.css';
import { wrap } from 'comlink';
import { render } from 'preact';
import type { Chapter, ReferenceService } from '../../engine/index';
import { watchPaper } from '../page/paper';
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

/** Only what was there when the page was loaded is found by the browser itself: the place asked for is sought again. */
function goToPlace(): void {
  if (location.hash !== '') location.replace(location.hash);
}

const paper = watchPaper();

async function start(): Promise<void> {
  const app = document.getElementById('app')!;
  try {
    const chapters = await readReference();
    render(<ReferencePage chapters={chapters} paper={paper} />, app);
    goToPlace();
  } catch (error) {
    render(<p role="alert">{error instanceof Error ? error.message : String(error)} Load the page again.</p>, app);
  }
}

void start();
