/** Starts the form, or in a worker of it the reader; bundled into the form's script when the library is built. */
import { unzlibSync } from 'fflate';
import { render } from 'preact';
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
  const session: Session = new Session({ own, library: unpacked }, root.dataset.version ?? '', () => {
    if (!waits) requestAnimationFrame(draw);
    waits = true;
  });
  root.replaceChildren();
  draw();
  session.begin().catch((error: Error) => session.tell(`What was kept cannot be had: ${error.message}`));
}

let library: Promise<string> | undefined;

/** The library within the file; the browser unpacks it beside its other work where it can. */
function unpacked(): Promise<string> {
  library ??= (async () => {
    const packed = atob(document.getElementById('library')!.textContent ?? '');
    const bytes = new Uint8Array(packed.length);
    for (let at = 0; at < packed.length; at++) bytes[at] = packed.charCodeAt(at);
    if (typeof DecompressionStream === 'undefined') return new TextDecoder().decode(unzlibSync(bytes));
    return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'))).text();
  })();
  return library;
}
