/** What was worked out about an object, found again by a key for as long as the object is there. */
export class Remembered<Result> {
  private readonly kept = new WeakMap<object, Map<string, Result>>();

  /** @param most - results kept about one object: the oldest goes first */
  constructor(private readonly most = Number.POSITIVE_INFINITY) {}

  /** The result kept under a key; worked out where there is none yet. */
  of(object: object, key: string, work: () => Result): Result {
    const found = this.kept.get(object) ?? new Map<string, Result>();
    this.kept.set(object, found);
    let result = found.get(key);
    if (result === undefined) {
      result = work();
      found.set(key, result);
      if (found.size > this.most) found.delete(found.keys().next().value!);
    }
    return result;
  }
}
