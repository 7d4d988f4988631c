/** Middle of a list. */
export const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

/** Time of the processor that a call takes, ms, whatever else the machine does; and what it returns. */
export function timed(call) {
  const { user, system } = process.cpuUsage();
  const made = call();
  const after = process.cpuUsage();
  return { time: (after.user - user + after.system - system) / 1000, made };
}
