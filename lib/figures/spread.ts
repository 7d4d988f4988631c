/** Labels moved apart so that none covers another. */

/**
 * Positions at least `gap` apart and inside `[low, high]`, in the order of and as near as may be to those wanted;
 * when they do not fit, they are spaced evenly over the range.
 * @param wanted any order, any unit
 * @returns one position for each wanted, in the order given
 */
export function spread(wanted: number[], gap: number, low: number, high: number): number[] {
  const order = wanted.map((_, at) => at).sort((a, b) => wanted[a]! - wanted[b]! || a - b);
  const step = Math.min(gap, (high - low) / Math.max(wanted.length - 1, 1));
  // Blocks of labels that touch share one shift, their mean distance from where they want to be.
  const blocks: { members: number[]; start: number }[] = [];
  for (const at of order) {
    let block = { members: [at], start: clamp(wanted[at]!, low, high) };
    for (
      let last = blocks.at(-1);
      last && last.start + last.members.length * step > block.start;
      last = blocks.at(-1)
    ) {
      blocks.pop();
      const members = [...last.members, ...block.members];
      const mean = members.reduce((sum, m, i) => sum + wanted[m]! - i * step, 0) / members.length;
      block = { members, start: clamp(mean, low, high - (members.length - 1) * step) };
    }
    blocks.push(block);
  }
  const placed = new Array<number>(wanted.length);
  for (const { members, start } of blocks)
    members.forEach((at, i) => {
      placed[at] = start + i * step;
    });
  return placed;
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(Math.max(value, low), Math.max(low, high));
}
