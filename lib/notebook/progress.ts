/** What is being done, on one line of the terminal that is written over; line below line where there is none. */
import { visible } from '../figures/visible.js';

const CLEAR = '\r\u001b[K';
const WIDTH = 80;

/** Characters that fit beside each other on standard output. */
export function terminalWidth(): number {
  return process.stdout.columns || WIDTH;
}

/** Says what is being done now. */
export function progress(text: string): void {
  const shown = visible(text);
  process.stdout.write(
    process.stdout.isTTY ? `${CLEAR}${[...shown].slice(0, terminalWidth() - 1).join('')}` : `${shown}\n`,
  );
}

/** Takes the line away before something that stays is written. */
export function progressDone(): void {
  if (process.stdout.isTTY) process.stdout.write(CLEAR);
}
