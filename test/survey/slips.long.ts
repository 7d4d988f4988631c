/** The slips in the demo that `slips.test.ts` leaves out. */
import { slipsAreTold } from './slipsTold.js';

slipsAreTold('clay-hollow');
