/** Starts the form, or in a worker of it the reader; bundled into the form's script when the library is built. */
import { render } from 'preact';
import { joined } from '../../page/liveScripts.js';
import { unpacked } from '../../page/packed.js';
import { type ReadRequest, readRequest } from '../reading.js';
import { App } from './app.js';
import { Session } from './session.js';
import { view } from './view.js';

if (typeof document === 'undefined')
  globalThis.addEventListener('message', (event) => {
    readRequest((event as MessageEvent<ReadRequest>).data, (reply) => globalThis.postMessage(reply));
  });
else start();

function start(): void {
  const root = document.getElementById('form')!;
  const own = (document.currentScript as HTMLScriptElement).text;
  let waits = false;
  const draw = () => {
    waits = false;
    render(view`<${App} session=${session} />`, root);
  };
  const held = (id: string) => document.getElementById(id)!.textContent ?? '';
  let library: Promise<string> | undefined;
  const scripts = {
    own,
    library() {
      library ??= unpacked(held('library'));
      return library;
    },
    page: () =>
      joined({
        own: held('page-script'),
        allowed: document.getElementById('library')!.dataset.allowed ?? '',
        library: held('library'),
      }),
  };
  const session: Session = new Session(scripts, root.dataset.version ?? '', () => {
    if (!waits) requestAnimationFrame(draw);
    waits = true;
  });
  root.replaceChildren();
  draw();
  session.begin().catch((error: Error) => session.tell(`What was kept cannot be had: ${error.message}`));
}
