/** The library as a file carries it: deflated and in base64, a third of its size, unpacked when it is first needed. */
import { unzlibSync } from 'fflate';

/**
 * The text that was packed; the browser unpacks it beside its other work where it can.
 * @param packed - deflated (zlib), in base64
 */
export async function unpacked(packed: string): Promise<string> {
  const coded = atob(packed);
  const bytes = new Uint8Array(coded.length);
  for (let at = 0; at < coded.length; at++) bytes[at] = coded.charCodeAt(at);
  if (typeof DecompressionStream === 'undefined') return new TextDecoder().decode(unzlibSync(bytes));
  return new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'))).text();
}
