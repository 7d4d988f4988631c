/** Whole counts that begin at one depth and end at another, summed up over the depths. */
export class Onsets {
  private readonly change: Int32Array;
  private empty = true;

  /** @param depths - how many */
  constructor(private readonly depths: number) {
    this.change = new Int32Array(depths + 1);
  }

  /** Counts at the depths `from` up to but not `to`. */
  add(count: number, from: number, to = this.depths): void {
    this.empty = false;
    this.change[from] += count;
    this.change[to] -= count;
  }

  /** Adds the count at each depth, times a weight, to sums; then starts anew. */
  moveTo(sums: Float64Array, weight: number, stride = 1, offset = 0): void {
    if (this.empty) return;
    this.empty = true;
    let count = 0;
    for (let d = 0; d < this.depths; d++) {
      count += this.change[d];
      if (count > 0) sums[offset + d * stride] += weight * count;
    }
    this.change.fill(0);
  }
}
