/** Years failing in each sample at each depth: whole counts that begin at one depth and end at another. */
export class Onsets {
  private readonly change: Int16Array;
  private readonly touched: Uint8Array;

  /**
   * @param samples - how many
   * @param depths - how many
   * @param rounds - how often each year is counted, at most 12
   */
  constructor(
    private readonly samples: number,
    private readonly depths: number,
    private readonly rounds: number,
  ) {
    this.change = new Int16Array(samples * (depths + 1));
    this.touched = new Uint8Array(samples);
  }

  /** Counts in a sample at the depths `from` up to but not `to`. */
  add(sample: number, count: number, from: number, to = this.depths): void {
    const row = sample * (this.depths + 1);
    this.touched[sample] |= Number(from < to);
    this.change[row + from] += count;
    this.change[row + to] -= count;
  }

  /**
   * Adds the years of each sample, times its weight, to sums by depth.
   * @param weight - one a sample
   */
  addTo(sums: Float64Array, weight: ArrayLike<number>): void {
    const { change, depths, samples } = this;
    for (let s = 0, row = 0; s < samples; s++, row += depths + 1) {
      if (this.touched[s] === 0) continue;
      const each = weight[s] / this.rounds;
      let count = 0;
      for (let d = 0; d < depths; d++) {
        count += change[row + d];
        if (count > 0) sums[d] += each * count;
      }
    }
  }

  /**
   * Adds the years at one depth, times the weight of the sample, to sums by sample.
   * @param weight - one a sample
   */
  addAt(depth: number, sums: Float64Array, weight: ArrayLike<number>): void {
    const { change, depths, samples } = this;
    for (let s = 0, row = 0; s < samples; s++, row += depths + 1) {
      if (this.touched[s] === 0) continue;
      let count = 0;
      for (let d = 0; d <= depth; d++) count += change[row + d];
      sums[s] += (weight[s] / this.rounds) * count;
    }
  }
}
