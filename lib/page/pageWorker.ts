/** The page's side of the library: asks it in a worker; where none can be started, beside the page. */
import type { LiveData } from './liveData.js';
import { addressOf, startedWorker } from './ownWorker.js';
import type { PageReply, PageRequest, QuestionName, Questions } from './pageQuestions.js';

/** Where the library is to be had. */
export interface Library {
  /** text of the script for a worker */
  script: string;
  /** runs it in the page itself, for want of a worker */
  here(): void;
}

declare global {
  interface Window {
    /** Answers in the page itself; there when the library has run in it. */
    underpondReckoner?: () => (request: PageRequest) => PageReply;
  }
}

/** Asks a question; rejects with what the library says where it cannot answer. */
export type Ask = <K extends QuestionName>(page: K, ask: Questions[K]['ask']) => Promise<Questions[K]['answer']>;

interface Waiting {
  request: PageRequest;
  resolve(answer: unknown): void;
  reject(error: Error): void;
}

/**
 * Something to ask about a survey, and the promise of its controls. Nothing is started before the first question.
 * @param library - text of it
 * @param data - of the page
 */
export function pageWorker(library: Library, data: LiveData): Ask {
  const waiting = new Map<number, Waiting>();
  let count = 0;
  let answered = false;
  let post: ((request: PageRequest) => void) | undefined;
  const take = (reply: PageReply) => {
    answered = true;
    const { resolve, reject } = waiting.get(reply.id)!;
    waiting.delete(reply.id);
    if ('failed' in reply) reject(new Error(reply.failed));
    else resolve(reply.answer);
  };
  const here = () => {
    library.here();
    const answer = window.underpondReckoner!();
    // One after another, so that the page can show that it is at work.
    post = (request) => setTimeout(() => take(answer(request)), 30);
    for (const { request } of waiting.values()) post(request);
  };
  const failed = (message: string) => {
    if (!answered) {
      answered = true;
      try {
        here();
        return;
      } catch {
        // Neither beside the page nor in it: told below.
      }
    }
    for (const { reject } of waiting.values()) reject(new Error(message));
    waiting.clear();
  };
  const start = () => {
    try {
      const worker = startedWorker<PageReply>(addressOf(library.script), take, failed);
      post = (request) => worker.postMessage(request);
    } catch {
      here();
    }
  };
  const send = (page: QuestionName, ask: unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      count += 1;
      const request = { id: count, page, ask } as PageRequest;
      waiting.set(request.id, { request, resolve, reject });
      post!(request);
    });
  let opened: Promise<unknown> | undefined;
  return async (page, ask) => {
    if (!post) start();
    opened ??= send('open', { data });
    return (page === 'open' ? opened : send(page, ask)) as Promise<never>;
  };
}
