import { escapeHtml } from '../figures/escape.js';
import type { LiveScripts } from '../page/liveScripts.js';
import { inlineScript, policyOf, scriptElement } from '../page/policy.js';
import { InputError } from '../units/index.js';
import { FORM_STYLE } from './formStyle.js';

/** What the form is made of. */
interface FormParts {
  /** script of the form */
  script: string;
  /** of the page: it goes into pages that are saved, and its library answers in a worker */
  page: LiveScripts;
  /** of the library */
  version: string;
}

/**
 * The survey as a form: one HTML file that opens offline and on a phone, makes no request and runs only its own scripts.
 * @param parts - its scripts and their version
 * @returns HTML as text, to be written as UTF-8
 * @throws InputError when a script's text would break out of its element
 */
export function formHtml({ script, page: { own: page, allowed, library }, version }: FormParts): string {
  const own = inlineScript(script);
  if (!/^[A-Za-z0-9+/=]*$/.test(library))
    throw new InputError('invalid-input', 'invalid library - it is not in base64. Deflate it and encode it');
  // The worker is made from text within the file.
  const policy = `${policyOf([own], FORM_STYLE)}; worker-src blob:`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="referrer" content="no-referrer">
<meta name="color-scheme" content="light dark">
<title>Pond survey: a form</title>
<style>${FORM_STYLE}</style>
</head>
<body>
<div id="form" data-version="${version.replace(/[^\w.-]/g, '')}"><main><h1>Pond survey</h1><p>This form needs a browser that runs scripts. Or print the field sheet of a new survey.</p></main></div>
${scriptElement(library, ` type="application/octet-stream" id="library" data-allowed="${escapeHtml(allowed)}"`)}${scriptElement(inlineScript(page), ' type="text/plain" id="page-script"')}${scriptElement(own)}</body>
</html>
`;
}
