import { method } from '../formula/index.js';
import type { UsdaClass } from './words.js';

export const textureKey = method({
  title: 'Texture by feel',
  what: 'The texture class of a handful of wet soil from whether it balls, how long a ribbon it gives, and grit or smoothness.',
  assumptions: [
    'ribbon breaks at 25 and 50 mm; a redrawn chart has 2 and 3 inches, which calls a 60 mm ribbon clay loam',
    'kneaded to putty for a minute, gravel picked out',
    'does not tell silt from silt loam',
  ],
  source:
    'Thien 1979, J. Agronomic Education 8:54–55 (flow seen in public copies; the 50 mm limit from memory)',
});

/** A question of the key; an answer leads to the next question or to a class. */
export interface FeelStep {
  ask: string;
  answers: Record<string, { next: string } | { texture: UsdaClass }>;
}

const RUB = 'Wet a pinch well in the palm and rub it with a finger. How does it feel?';
const grit = (gritty: UsdaClass, smooth: UsdaClass, neither: UsdaClass): FeelStep => ({
  ask: RUB,
  answers: { gritty: { texture: gritty }, smooth: { texture: smooth }, neither: { texture: neither } },
});

/** The guided key, starting at `ball`. */
export const FEEL_KEY: Record<string, FeelStep> = {
  ball: {
    ask: 'Wet a small handful, knead it to putty and squeeze it. Does it stay a ball?',
    answers: { no: { texture: 'sand' }, yes: { next: 'ribbon' } },
  },
  ribbon: {
    ask: 'Push it up between thumb and finger. How long is the ribbon when it breaks of its own weight?',
    answers: {
      'no ribbon': { texture: 'loamy sand' },
      'under 25 mm': { next: 'short' },
      '25 to 50 mm': { next: 'medium' },
      '50 mm and more': { next: 'long' },
    },
  },
  short: grit('sandy loam', 'silt loam', 'loam'),
  medium: grit('sandy clay loam', 'silty clay loam', 'clay loam'),
  long: grit('sandy clay', 'silty clay', 'clay'),
};

/** What was felt. */
export interface Feel {
  ball: boolean;
  /** m; 0 when it gives none */
  ribbon: number;
  rub: 'gritty' | 'smooth' | 'neither';
}

/**
 * Texture class of a soil by feel.
 * @param feel - as felt; `ribbon` in m, 0 to 0.5
 * @returns the class the key leads to
 * @throws RangeError when the ribbon is outside 0 to 0.5 m
 */
export function textureByFeel({ ball, ribbon, rub }: Feel): UsdaClass {
  if (!(ribbon >= 0 && ribbon <= 0.5))
    throw new RangeError(`invalid ribbon ${ribbon} m; it must be 0 to 0.5 m, so measure it with a rule`);
  const said: Record<string, string> = {
    ball: ball ? 'yes' : 'no',
    ribbon:
      ribbon === 0
        ? 'no ribbon'
        : ribbon < 0.025
          ? 'under 25 mm'
          : ribbon < 0.05
            ? '25 to 50 mm'
            : '50 mm and more',
  };
  let at = 'ball';
  for (;;) {
    const step = FEEL_KEY[at]!.answers[said[at] ?? rub]!;
    if ('texture' in step) return step.texture;
    at = step.next;
  }
}
