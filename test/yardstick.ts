/**
 * Processor time of a fixed piece of work, s: limits on time are told as multiples of it, since computers differ and a
 * busy one is slower even by the clock of its processor. What the library does: tables of text taken apart and sorted,
 * many small objects, exponentials over arrays that a processor keeps near.
 */
export function yardstick(): number {
  const rows = Array.from({ length: 30_000 }, (_, i) => ({
    date: new Date(i * 86_400_000).toISOString().slice(0, 10),
    rain: ((i * 7919) % 1000) / 10,
    note: `look ${(i * 104_729) % 65_536}`,
  }));
  const start = process.cpuUsage();
  let sum = 0;
  for (let round = 0; round < 4; round++) {
    const text = rows.map(({ date, rain, note }) => `${date},${rain},${note}`).join('\n');
    const read = text.split('\n').map((line) => {
      const [date = '', rain, note = ''] = line.split(',');
      return { date, rain: Number(rain), note };
    });
    read.sort((a, b) => (a.note < b.note ? -1 : a.note > b.note ? 1 : 0));
    const store = Float64Array.from(read, ({ rain }) => rain / 100);
    for (let run = 0; run < 100; run++)
      for (let i = 1; i < store.length; i++) store[i] = Math.exp(-Math.abs(store[i]! - 0.5 * store[i - 1]!));
    sum += store[store.length - 1]! + JSON.parse(JSON.stringify(read)).length;
  }
  const { user, system } = process.cpuUsage(start);
  if (!(sum > 0)) throw new Error('the yardstick went astray');
  return (user + system) / 1e6;
}
