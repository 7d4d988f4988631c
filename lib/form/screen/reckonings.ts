/** The form's side of its workers: one reads while somebody types, one answers and is ended when the facts move on. */
import { addressOf, startedWorker } from '../../page/ownWorker.js';
import type { Photos } from '../../page/record.js';
import type { Outputs } from '../answer.js';
import type { Given, ReadReply, ReadRequest } from '../reading.js';
import type { Reply, Request } from '../reckoner.js';

/** What comes back of the newest facts. */
export type News = Exclude<Reply, { kind: 'outputs' }> | ReadReply;

/** Scripts that workers are made of: the form's own, which reads, and the library, which answers. */
export interface Scripts {
  own: string;
  /** unpacked when it is first needed */
  library(): Promise<string>;
  /** of a page that is saved */
  page(): string;
}

export interface Reckonings {
  /** reads what was typed, and answers it where nothing is wrong with it */
  take(given: Given, large: readonly string[]): void;
  /** the page and result.json of a survey */
  outputs(survey: string, version: string, photos: Photos): Promise<Outputs>;
}

/**
 * Starts the workers.
 * @param told takes what comes back of the newest facts; older news is left out
 */
export function reckonings({ own, library, page }: Scripts, told: (news: News) => void): Reckonings {
  let address: Promise<string> | undefined;
  const libraryAddress = () => {
    address ??= library().then(addressOf);
    return address;
  };
  let newest = 0;
  let answering: { worker: Worker; busy: boolean } | undefined;
  const news = (reply: News) => {
    if (reply.id === newest) told(reply);
  };
  const failed = (message: string) => told({ id: newest, kind: 'failed', message });

  const answer = async (id: number, survey: string) => {
    const script = await libraryAddress();
    if (id !== newest) return;
    if (!answering) {
      const each = { busy: true, worker: undefined as unknown as Worker };
      const take = (reply: Reply) => {
        if (reply.kind === 'outputs') return;
        if (reply.kind === 'failed' || reply.last) each.busy = false;
        news(reply);
      };
      each.worker = startedWorker(script, take, failed);
      answering = each;
    }
    answering.busy = true;
    answering.worker.postMessage({ id, kind: 'answer', survey } satisfies Request);
  };
  const take = (reply: ReadReply) => {
    if (reply.id !== newest) return;
    told(reply);
    if (reply.kind === 'read' && reply.whole && reply.survey)
      answer(reply.id, reply.survey).catch((error: Error) => failed(error.message));
  };
  const reader = startedWorker(addressOf(own), take, failed);

  return {
    take(given, large) {
      newest++;
      if (answering?.busy) {
        answering.worker.terminate();
        answering = undefined;
      }
      reader.postMessage({ id: newest, given, large } satisfies ReadRequest);
    },
    async outputs(survey, version, photos) {
      const [address, script] = [await libraryAddress(), page()];
      return new Promise((resolve, reject) => {
        const done = (reply: Reply) => {
          worker.terminate();
          if (reply.kind === 'outputs') resolve(reply.outputs);
          else reject(new Error(reply.kind === 'failed' ? reply.message : 'there is no answer yet'));
        };
        const worker = startedWorker(address, done, (message) => reject(new Error(message)));
        const request: Request = { id: 0, kind: 'outputs', survey, script, version, photos };
        worker.postMessage(request);
      });
    },
  };
}
