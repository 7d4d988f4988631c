import type { Site } from '../site/index.js';

/** Rain, m, in seconds. */
export interface Storm {
  rain: number;
  seconds: number;
}

/** A storm where the survey names none: 30 mm in an hour. Our choice. */
export const STORM: Storm = { rain: 0.03, seconds: 3600 };

/** The storm that the survey names, else a heavy summer one. */
export function stormOf({ survey: { site } }: Site): Storm {
  return { rain: site.storm_rain ?? STORM.rain, seconds: site.storm_hours ?? STORM.seconds };
}
