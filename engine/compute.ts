/** The engine from the command line: reads the file, answers on standard output, says what is wrong on standard error. */
import { readFileSync } from 'node:fs';
import { answer, HELP, library, readArguments } from './study/index';

/** Gives the exit code. */
export function main(words: readonly string[]): number {
  // Whoever reads the answer may have read enough (a pager that was closed).
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  const read = readArguments(words);
  if (read.ask === 'help') {
    process.stdout.write(HELP);
    return 0;
  }
  if (read.ask === 'nothing') {
    process.stderr.write(`${read.message}\n`);
    return 2;
  }
  const { request } = read;
  let file: string;
  try {
    file = readFileSync(request.file, 'utf8');
  } catch (error) {
    process.stderr.write(`${request.file} cannot be read: ${(error as Error).message}. Name a file that is there.\n`);
    return 1;
  }
  const { out, err, code } = answer(request, file, library);
  process.stdout.write(out);
  process.stderr.write(err);
  return code;
}
