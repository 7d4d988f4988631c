/** The script of the page in its two parts: the small one that runs at once, and the library, packed, that runs in a worker. */

/** Stands between the parts; put together, so that neither part holds it. */
const PARTING = ['\n/*', 'The library: */\n'].join(' ');

/** The parts of a script; one without a library has only the first. */
export interface LiveScripts {
  own: string;
  /** source expression by which a policy allows the library, unpacked, in the page itself */
  allowed: string;
  /** as `unpacked` takes it */
  library: string;
}

/** The two parts of a script as it was built. */
export function partsOf(script: string): LiveScripts {
  const at = script.indexOf(PARTING);
  if (at < 0) return { own: script, allowed: '', library: '' };
  const [allowed = '', library = ''] = script.slice(at + PARTING.length).split('\n');
  return { own: script.slice(0, at), allowed, library };
}

/** The script as it was built, from its parts. */
export function joined({ own, allowed, library }: LiveScripts): string {
  return library === '' ? own : `${own}${PARTING}${allowed}\n${library}`;
}
