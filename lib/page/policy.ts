import { sha256 } from '@noble/hashes/sha2.js';
import { InputError } from '../units/index.js';

/**
 * Content security policy of a page that makes no request and holds only the scripts and the style it was made with.
 * @param scripts text of every inline script, as a browser reads it
 * @param style text of the one style sheet; nothing carries a style attribute
 * @param allowed source expressions of further scripts
 */
export function policyOf(scripts: string[], style: string, allowed: string[] = []): string {
  const sources = [...scripts.map(sourceHash), ...allowed];
  return [
    "default-src 'none'",
    `script-src ${sources.length > 0 ? sources.join(' ') : "'none'"}`,
    `style-src ${sourceHash(style)}`,
    'img-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

/** The source expression by which a policy allows an inline text. */
export function sourceHash(text: string): string {
  return `'sha256-${base64(sha256(new TextEncoder().encode(text)))}'`;
}

/** A script's text with the line ends an HTML reader makes of it, and nothing that would end the script early. */
export function inlineScript(text: string): string {
  const read = text.replace(/\r\n?/g, '\n');
  if (/<\/?script/i.test(read))
    throw new InputError(
      'invalid-input',
      'invalid script - it holds the tag of a script. Give the library as it was published',
    );
  return read;
}

function base64(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes));
}

/** An element that holds a script or data as text; put together, so that a script that makes pages can be in one. */
export function scriptElement(text: string, attributes = ''): string {
  const name = 'script';
  return `<${name}${attributes}>${text}</${name}>\n`;
}
