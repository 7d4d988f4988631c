/** What is written to a terminal: survey text can neither move its cursor nor reach its clipboard. */
import { visible } from '../figures/visible.js';

/** Every line as {@link visible} shows it. */
export function inert(text: string): string {
  return text
    .split(/\r?\n/)
    .map((line) => visible(line))
    .join('\n');
}

/** Writes a line, or several, to standard output. */
export function print(text: string): void {
  process.stdout.write(`${inert(text)}\n`);
}

/** Writes what went wrong to standard error. */
export function printError(error: unknown): void {
  process.stderr.write(`${inert(error instanceof Error ? error.message : String(error))}\n`);
}
