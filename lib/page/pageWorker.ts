/** The page's side of the library: asks it in a worker; where none can be started, beside the page. */
import { addressInPieces, pause, startedWorker } from './ownWorker.js';
import type { Controls, PageReply, PageRequest, QuestionName, Questions } from './pageQuestions.js';

/** Where the library is to be had. */
export interface Library {
  /** of the script for a worker */
  text(): Promise<string>;
  /** runs it in the page itself, for want of a worker */
  here(text: string): void;
}

declare global {
  interface Window {
    /** Answers in the page itself; there when the library has run in it. */
    underpondReckoner?: () => (request: PageRequest) => PageReply;
  }
}

/** Asks about a survey; rejects with what the library says where it cannot answer. Nothing is started before the first question. */
export interface Ask {
  /** the controls; the library is there when it answers */
  controls(): Promise<Controls>;
  about<K extends Exclude<QuestionName, 'open'>>(
    page: K,
    ask: Questions[K]['ask'],
  ): Promise<Questions[K]['answer']>;
}

interface Waiting {
  request: PageRequest;
  resolve(answer: unknown): void;
  reject(error: Error): void;
}

/**
 * Something to ask about the survey of a page.
 * @param library - text of it
 * @param data - of the page: {@link LiveData} as JSON, which is read in the worker only
 */
export function pageWorker(library: Library, data: string): Ask {
  const waiting = new Map<number, Waiting>();
  let count = 0;
  let works = false;
  let sender: { post(request: PageRequest): void } | undefined;
  const take = (reply: PageReply) => {
    works = true;
    const { resolve, reject } = waiting.get(reply.id)!;
    waiting.delete(reply.id);
    if ('failed' in reply) reject(new Error(reply.failed));
    else resolve(reply.answer);
  };
  const giveUp = (message: string) => {
    for (const { reject } of waiting.values()) reject(new Error(message));
    waiting.clear();
  };
  const begin = (post: (request: PageRequest) => void) => {
    sender = { post };
    for (const { request } of waiting.values()) sender.post(request);
  };
  const here = (text: string, why: string) => {
    library.here(text);
    const answer = window.underpondReckoner?.();
    if (!answer) {
      giveUp(why);
      return;
    }
    works = true;
    // One after another, so that the page can show that it is at work.
    begin((request) => {
      setTimeout(() => take(answer(request)), 30);
    });
  };
  const start = async () => {
    const text = await library.text();
    const address = await addressInPieces(text);
    const failed = (why: string) => (works ? giveUp(why) : here(text, why));
    try {
      const worker = startedWorker<PageReply>(address, take, failed);
      await pause();
      // One that failed meanwhile is not asked.
      if (!sender) begin((request) => worker.postMessage(request));
    } catch (error) {
      here(text, error instanceof Error ? error.message : String(error));
    }
  };
  const send = (page: QuestionName, ask: unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      count += 1;
      const request = { id: count, page, ask } as PageRequest;
      waiting.set(request.id, { request, resolve, reject });
      sender?.post(request);
    });
  let opened: Promise<Controls> | undefined;
  const open = () => {
    if (!opened) {
      opened = send('open', data) as Promise<Controls>;
      start().catch((error: Error) => giveUp(error.message));
    }
    return opened;
  };
  return {
    controls: open,
    about(page, ask) {
      // One that cannot be opened cannot answer either, and says so itself.
      open().catch(() => {});
      return send(page, ask) as Promise<never>;
    },
  };
}
