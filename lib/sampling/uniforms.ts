import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';

/** A source of uniforms in (0, 1) from an explicit seed (Mersenne Twister). */
export function uniforms(seed: number): () => number {
  const generator = mersenne(seed);
  return () => {
    const u = uniformFloat64(generator);
    return u > 0 ? u : Number.MIN_VALUE;
  };
}
