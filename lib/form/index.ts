export { type FormParts, formHtml } from './formHtml.js';
