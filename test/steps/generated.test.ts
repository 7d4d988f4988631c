import { expect, it } from 'vitest';
import { wrongGardens } from './generated.js';

it('the steps of two invented gardens make one another as they are printed', () => {
  const { read, wrong } = wrongGardens([1, 2]);
  expect(read).toBeGreaterThan(0);
  expect(wrong).toEqual({});
});
