import { expect, it } from 'vitest';
import { wrongGardens } from './generated.js';

it('the steps of fifty invented gardens make one another as they are printed', () => {
  const { read, wrong } = wrongGardens(Array.from({ length: 50 }, (_, i) => i + 1));
  expect(read).toBeGreaterThan(30);
  expect(wrong).toEqual({});
});
