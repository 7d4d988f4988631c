/** Looks into holes against each other, the holes and the calendar. Limits: common practice. */

import { calendarOf } from '../climate/index.js';
import { dateText } from './calendar.js';
import { type Doubt, Doubts, metres } from './doubt.js';
import type { Look, Survey } from './survey.js';
import { isNamedHole } from './water.js';

/** Water of the ground seen standing higher than this above it, m, is a pipe read from its top. */
const ABOVE_GROUND = 0.5;
/** A hole without a pipe runs over: so much is a wet lawn, m. */
const OVER_THE_HOLE = 0.1;
/** No garden's looks are older, as days since 1970-01-01: 1950. */
const OLDEST = -7305;
/** A spade's or an auger's hole, and a standpipe, m. */
const NARROWEST_HOLE = 0.025;
const WIDEST_HOLE = 0.8;
const NARROWEST_PIPE = 0.01;
const WIDEST_PIPE = 0.16;
/** Looks so many days away from the weather were not made in it. */
const APART = 370;

/** What is odd about the looks. */
export function lookDoubts({ looks, soakage, weather, pond }: Survey, today: number): Doubt[] {
  const doubts = new Doubts();
  const holes = looks.filter(({ pit }) => isNamedHole(pit));
  const first = (odd: (look: Look) => boolean) => looks.find(odd);
  const tell = (odd: (look: Look) => boolean, column: string, say: (look: Look) => string) => {
    const look = first(odd);
    if (look) doubts.when(true, { ...look.origin, column }, say(look));
  };
  tell(
    ({ pit, depth }) => isNamedHole(pit) && (depth ?? 0) < -ABOVE_GROUND,
    'depth',
    ({ depth }) =>
      `water ${metres(-(depth ?? 0))} above the ground: check the sign, and write pipe_top where depths are from the top of a pipe`,
  );
  const piped = new Set(
    looks.flatMap(({ pit, pipeBore, openFrom }) =>
      pipeBore !== undefined || openFrom !== undefined ? [pit] : [],
    ),
  );
  tell(
    ({ pit, depth = 0 }) =>
      isNamedHole(pit) && !piped.has(pit) && depth < -OVER_THE_HOLE && depth >= -ABOVE_GROUND,
    'depth',
    ({ depth = 0 }) =>
      `water ${metres(-depth)} above the ground in a hole without a pipe, which would run over: check the sign, or write pipe_bore`,
  );
  tell(
    ({ day }) => Math.floor(day) > today,
    'date',
    ({ day }) => `${dateText(Math.floor(day))} has not come yet: check the year`,
  );
  tell(
    ({ day }) => day < OLDEST,
    'date',
    ({ day }) => `${dateText(Math.floor(day))} is a lifetime ago: check the year`,
  );
  tell(
    ({ holeDiameter: wide = 0.1 }) => wide > WIDEST_HOLE || wide < NARROWEST_HOLE,
    'hole_diameter',
    ({ holeDiameter = 0 }) => `a hole ${metres(holeDiameter)} wide: check the unit`,
  );
  tell(
    ({ pipeBore: bore = 0.03 }) => bore > WIDEST_PIPE || bore < NARROWEST_PIPE,
    'pipe_bore',
    ({ pipeBore = 0 }) => `a standpipe ${metres(pipeBore)} wide: check the unit`,
  );
  tell(
    ({ pipeBore = 0, holeDiameter = 9 }) => pipeBore > holeDiameter,
    'pipe_bore',
    ({ pipeBore = 0, holeDiameter = 0 }) =>
      `a pipe ${metres(pipeBore)} wide in a hole of ${metres(holeDiameter)}: check both units`,
  );
  tell(
    ({ pit, depth }) => pit === 'pond' && pond.depth !== undefined && (depth ?? 0) > pond.depth,
    'depth',
    ({ depth }) =>
      `the pond is read ${metres(depth ?? 0)} below its mark and is ${metres(pond.depth ?? 0)} deep`,
  );
  const wide = soakage.find(({ holeDiameter = 0.1 }) => holeDiameter > WIDEST_HOLE || holeDiameter < 0.05);
  if (wide)
    doubts.when(
      true,
      { ...wide.origin, column: 'hole_diameter' },
      `a test hole ${metres(wide.holeDiameter ?? 0)} wide: check the unit`,
    );
  const seen = new Map<string, Look>();
  for (const look of holes) {
    if (look.reading !== 'level' && look.reading !== 'dry') continue;
    const when = `${look.pit} ${look.day}`;
    const other = seen.get(when);
    doubts.when(
      other !== undefined && other.reading !== look.reading,
      { ...look.origin, column: 'reading' },
      `${look.pit} is dry and has a level at the same time: keep what was seen`,
    );
    seen.set(when, look);
  }
  const days = weather.map(({ day }) => day);
  const [begin, end] = [days[0], days.at(-1)];
  if (begin !== undefined && end !== undefined && holes.length > 0) {
    const near = holes.some(({ day }) => day > begin - APART && day < end + APART);
    doubts.when(
      !near,
      { ...holes[0]?.origin, file: 'water.csv', column: 'date' },
      `no look was made within a year of the weather, ${dateText(begin)} to ${dateText(end)}: check the years of both`,
    );
  }
  const month = ({ day }: Look) => calendarOf(Math.floor(day)).month;
  const byMonth = new Set(holes.map(month));
  const covered = holes.filter(({ reading }) => reading === 'level');
  doubts.when(
    byMonth.size > 3 && covered.length > 8 && new Set(covered.map(({ depth }) => depth)).size === 1,
    covered[0] && { ...covered[0].origin, column: 'depth' },
    `every look found the water at ${metres(covered[0]?.depth ?? 0)}: a level that never moves is a pipe that is stopped`,
  );
  return doubts.list;
}
