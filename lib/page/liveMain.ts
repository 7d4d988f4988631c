/** The small script of the page, bundled when the library is built; in a worker it does nothing. */
import { startLive } from './live.js';

if (typeof document !== 'undefined') startLive();
