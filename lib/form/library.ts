/** The page's script, bundled when the library is built; as a worker of the form it answers there, so that the form holds it once. */
import { startLive } from '../page/live.js';
import { answerRequest, type Request } from './reckoner.js';

if (typeof document === 'undefined')
  globalThis.addEventListener('message', (event) => {
    answerRequest((event as MessageEvent<Request>).data, (reply) => globalThis.postMessage(reply));
  });
else startLive();
