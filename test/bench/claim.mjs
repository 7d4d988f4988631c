/**
 * Prints a claim of speed as a line of JSON, which `npm run bench` gathers into its table.
 * @param claim - `what` was done, `ours` and `other` in ms within one run, `than` who the other is, `most`: the ratio
 *   ours / other that is claimed
 */
export function claim({ what, ours, other, than, most }) {
  console.log(`claim ${JSON.stringify({ what, ours, other, than, most })}`);
}
