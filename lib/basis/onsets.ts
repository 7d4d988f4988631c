/** Years failing, by sample and depth. */
export interface YearsFailing {
  /**
   * Adds the years of each sample, times its weight, to sums by depth.
   * @param weights - by depth, one a sample
   */
  addTo(sums: Float64Array, weights: readonly ArrayLike<number>[]): void;
  /**
   * Adds the years at one depth, times the weight of the sample, to sums by sample.
   * @param weight - one a sample
   */
  addAt(depth: number, sums: Float64Array, weight: ArrayLike<number>): void;
}

/** Years that fail at every depth up to one, the same for all samples. */
export class Shallow implements YearsFailing {
  /** how many, by sample */
  readonly of: Uint16Array;

  /**
   * @param samples - how many
   * @param reach - how many of the depths, from the shallowest
   */
  constructor(
    samples: number,
    readonly reach: number,
  ) {
    this.of = new Uint16Array(samples);
  }

  addTo(sums: Float64Array, weights: readonly ArrayLike<number>[]): void {
    let sum = 0;
    for (let d = 0; d < this.reach; d++) {
      if (weights[d] !== weights[d - 1]) {
        sum = 0;
        for (let s = 0; s < this.of.length; s++) sum += weights[d][s] * this.of[s];
      }
      sums[d] += sum;
    }
  }

  addAt(depth: number, sums: Float64Array, weight: ArrayLike<number>): void {
    if (depth >= this.reach) return;
    for (let s = 0; s < this.of.length; s++) sums[s] += weight[s] * this.of[s];
  }
}

/** Years that fail from one depth on or to another: whole counts that begin and end. */
export class Onsets implements YearsFailing {
  private readonly change: Int16Array;
  private readonly touched: Uint8Array;

  /**
   * @param samples - how many
   * @param depths - how many
   * @param rounds - how often each year is counted, at most 36
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

  addTo(sums: Float64Array, weights: readonly ArrayLike<number>[]): void {
    const { change, depths, samples, rounds } = this;
    for (let s = 0, row = 0; s < samples; s++, row += depths + 1) {
      if (this.touched[s] === 0) continue;
      let count = 0;
      for (let d = 0; d < depths; d++) {
        count += change[row + d];
        if (count > 0) sums[d] += (weights[d][s] / rounds) * count;
      }
    }
  }

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
