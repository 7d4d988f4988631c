import * as basis from '../../lib/basis/index.js';
import * as climate from '../../lib/climate/index.js';
import * as contract from '../../lib/contract/index.js';
import * as decision from '../../lib/decision/index.js';
import * as digging from '../../lib/digging/index.js';
import * as drain from '../../lib/drain/index.js';
import { catalogue, type Formula, type Method } from '../../lib/formula/index.js';
import * as groundwater from '../../lib/groundwater/index.js';
import * as heads from '../../lib/heads/index.js';
import * as options from '../../lib/options/index.js';
import * as pond from '../../lib/pond/index.js';
import * as reliability from '../../lib/reliability/index.js';
import * as report from '../../lib/report/index.js';
import * as sampling from '../../lib/sampling/index.js';
import * as seepage from '../../lib/seepage/index.js';
import * as site from '../../lib/site/index.js';
import * as soil from '../../lib/soil/index.js';
import * as text from '../../lib/text/index.js';
import * as uplift from '../../lib/uplift/index.js';
import * as works from '../../lib/works/index.js';

const entries = [
  sampling,
  soil,
  climate,
  seepage,
  groundwater,
  uplift,
  pond,
  drain,
  site,
  contract,
  text,
  heads,
  digging,
  basis,
  works,
  reliability,
  options,
  decision,
  report,
].flatMap((room) => Object.entries(catalogue(room)));

/** Every formula of the library by its export name. */
export const everyFormula = Object.fromEntries(
  entries.filter((e): e is [string, Formula] => e[1].kind === 'formula'),
);
/** Every method card by its export name. */
export const everyMethod = Object.fromEntries(
  entries.filter((e): e is [string, Method] => e[1].kind === 'method'),
);
