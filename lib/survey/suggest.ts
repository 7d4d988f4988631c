/**
 * The allowed word nearest to what was written, by edit distance (insert, delete, replace, swap of neighbours).
 * @param word as written, any case
 * @param allowed the words that would have been right
 * @returns the closest within a third of its letters (at least one), else undefined
 */
export function suggest(word: string, allowed: readonly string[]): string | undefined {
  const written = word.trim().toLowerCase();
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of allowed) {
    const most = Math.max(1, Math.floor(candidate.length / 3));
    // So many letters must at least be put in or taken out.
    if (Math.abs(candidate.length - written.length) > most) continue;
    const distance = editDistance(written, candidate.toLowerCase());
    if (distance < least && distance <= most) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

/**
 * The second half of a remedy: `Did you mean 'depth_m'?`, or the words to choose from.
 * @param listed a shorter way to write the allowed words, where there are many
 */
export function didYouMean(word: string, allowed: readonly string[], listed = allowed): string {
  const closest = suggest(word, allowed);
  return closest === undefined ? `Use one of: ${listed.join(', ')}.` : `Did you mean '${closest}'?`;
}

/** Optimal string alignment: G. Navarro, "A guided tour to approximate string matching", 2001 (from memory). */
function editDistance(a: string, b: string): number {
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1;
      let cost = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + change);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        cost = Math.min(cost, (beforeLast[j - 2] ?? 0) + 1);
      }
      row.push(cost);
    }
    beforeLast = last;
    last = row;
  }
  return last[b.length] ?? a.length;
}
