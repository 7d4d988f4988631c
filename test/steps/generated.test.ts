import { expect, it } from 'vitest';
import { wrongGardens } from './generated.js';

it('the steps of three invented gardens make one another as they are printed', () => {
  const { read, wrong } = wrongGardens([1, 2, 3]);
  expect(read).toBeGreaterThan(1);
  expect(wrong).toEqual({});
});
