import { sha256 } from '@noble/hashes/sha2.js';

/**
 * Content security policy of a page that makes no request and runs only the scripts it was made with.
 * @param scripts text of every inline script, as a browser reads it
 */
export function policyOf(scripts: string[]): string {
  const hashes = scripts.map((script) => `'sha256-${base64(sha256(new TextEncoder().encode(script)))}'`);
  return [
    "default-src 'none'",
    `script-src ${hashes.join(' ')}`,
    // The figure library writes style rules and style attributes.
    "style-src 'unsafe-inline'",
    'img-src data: blob:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/** A script's text with the line ends an HTML reader makes of it, and nothing that would end the script early. */
export function inlineScript(text: string): string {
  const read = text.replace(/\r\n?/g, '\n');
  if (/<\/?script/i.test(read))
    throw new Error(
      "invalid script - it holds '<script' or '</script'. Give the library as it was published",
    );
  return read;
}

function base64(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes));
}
