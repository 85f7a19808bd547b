import './theme/index.css';
import { nextTask } from './store/next-task';

/*
 * What the page is made of is run piece by piece, each in a task of its own: on a slow machine all of it at once would keep the page from
 * answering for a third of a second.
 */
async function begin(): Promise<void> {
  await import('../engine/index');
  await nextTask();
  await import('./begin');
  await nextTask();
  // What the charts write numbers with is slow when first made.
  new Intl.NumberFormat('en-US').format(0);
}

void begin();
