/**
 * Processor time of a fixed piece of work, s: limits on time are told as multiples of it, since computers differ and a
 * busy one is slower even by the clock of its processor. Sums and exponentials over 16 MB, so memory counts too.
 */
export function yardstick(): number {
  const values = Float64Array.from({ length: 2_000_000 }, (_, i) => (i % 1000) / 1000);
  const start = process.cpuUsage();
  for (let round = 0; round < 6; round++)
    for (let i = 0, j = 0; i < values.length; i++) {
      j = (j + 7919) % values.length;
      values[i] = Math.exp(-Math.abs(values[i] - 0.5 * values[j]));
    }
  const { user, system } = process.cpuUsage(start);
  if (!(values[0] > 0)) throw new Error('the yardstick went astray');
  return (user + system) / 1e6;
}
