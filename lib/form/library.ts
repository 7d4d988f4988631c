/**
 * The library as a script, bundled when it is built: it answers in a worker, of the form or of the page; in the page
 * itself only where no worker can be had.
 */
import type { PageRequest } from '../page/pageQuestions.js';
import { pageReckoner } from '../page/pageReckoner.js';
import { formReckoner, type Request } from './reckoner.js';

if (typeof document === 'undefined') {
  const answerForm = formReckoner();
  const answerPage = pageReckoner();
  globalThis.addEventListener('message', (event) => {
    const request = (event as MessageEvent<Request | PageRequest>).data;
    if ('page' in request) globalThis.postMessage(answerPage(request));
    else answerForm(request, (reply) => globalThis.postMessage(reply));
  });
} else window.underpondReckoner = pageReckoner;
