export { formHtml } from './formHtml.js';
