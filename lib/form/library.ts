/**
 * The library as a script, bundled when it is built: it answers in a worker, of the form or of the page; in the page
 * itself only where no worker can be had.
 */
import type { PageRequest } from '../page/pageQuestions.js';
import { pageReckoner } from '../page/pageReckoner.js';
import { answerRequest, type Request } from './reckoner.js';

if (typeof document === 'undefined') {
  const answerPage = pageReckoner();
  globalThis.addEventListener('message', (event) => {
    const request = (event as MessageEvent<Request | PageRequest>).data;
    if ('page' in request) globalThis.postMessage(answerPage(request));
    else answerRequest(request, (reply) => globalThis.postMessage(reply));
  });
} else window.underpondReckoner = pageReckoner;
