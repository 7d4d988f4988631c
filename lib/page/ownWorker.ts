/** Workers made of text that the file holds itself: nothing is fetched, and a policy that lets `blob:` work is enough. */

/** An address of a script for {@link startedWorker}. */
export const addressOf = (script: string): string =>
  URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));

/** Characters of a script that are taken at a time. */
const PIECE = 65_536;

/** The page answers its reader in between. */
export const pause = (): Promise<void> => new Promise((done) => setTimeout(done));

/** {@link addressOf}, made in pieces with a pause after each: a long script takes a phone longer than a blink. */
export async function addressInPieces(script: string): Promise<string> {
  const pieces: Blob[] = [];
  for (let at = 0; at < script.length; at += PIECE) {
    pieces.push(new Blob([script.slice(at, at + PIECE)]));
    await pause();
  }
  return URL.createObjectURL(new Blob(pieces, { type: 'text/javascript' }));
}

/**
 * Starts a worker.
 * @param take takes what it says
 * @param failed is told why it does not work
 */
export function startedWorker<R>(
  address: string,
  take: (reply: R) => void,
  failed: (message: string) => void,
): Worker {
  const worker = new Worker(address);
  worker.addEventListener('message', (event: MessageEvent<R>) => take(event.data));
  worker.addEventListener('error', (event) => {
    event.preventDefault();
    failed(event.message || 'this browser lets a page do no work beside it');
  });
  return worker;
}
