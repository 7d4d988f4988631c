/** The script of the page in its two parts: the small one that runs at once, and the library that runs in a worker. */

/** Stands between the parts; put together, so that neither part holds it. */
export const PARTING = ['\n/*', 'The library: */\n'].join(' ');

/** The parts of a script; one without a library has only the first. */
export interface LiveScripts {
  own: string;
  library: string;
}

/** The two parts of a script as it was built. */
export function partsOf(script: string): LiveScripts {
  const at = script.indexOf(PARTING);
  return at < 0
    ? { own: script, library: '' }
    : { own: script.slice(0, at), library: script.slice(at + PARTING.length) };
}

/** The script as it was built, from its parts. */
export function joined({ own, library }: LiveScripts): string {
  return library === '' ? own : `${own}${PARTING}${library}`;
}
