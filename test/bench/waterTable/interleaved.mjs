/**
 * The loop of runDays over several parameter sets side by side, so that the processor may work on one set while it waits
 * for another. Made from the text of runDays itself: every name of its own is repeated with the number of the set.
 */
import * as climate from '../../../dist/climate/index.js';
import * as groundwater from '../../../dist/groundwater/index.js';

const { columnConstants, columnSeries, runDays } = groundwater;
const SHARED = ['rain', 'tmean', 'demand', 'd', 'from', 'to', 'Math', 'const', 'let', 'return'];
const STRETCH = 365;

/** A function (record, from, to, sets, states, series) that returns the largest closure error. */
function interleaved(count) {
  const text = runDays.toString().replace(/\/\/.*/g, '');
  const [, before, body, after, closure] =
    /\) \{\n([\s\S]*?)for \(let d = from; d < to; d\+\+\) \{([\s\S]*?)\n {4}\}\n([\s\S]*?)return (.*);/.exec(
      text,
    );
  const scope = { ...climate, ...groundwater };
  const used = Object.keys(scope).filter((name) => new RegExp(`\\b${name}\\b`).test(text));
  const kept = new Set([...SHARED, ...used]);
  const repeated = (part, end = '\n') => {
    const spelled = part.replace(/\{ ([\w, ]+) \}/g, (_, names) => `{ ${names.replace(/\w+/g, '$&: $&')} }`);
    const own = (k) => (name) => (kept.has(name) ? name : name + k);
    return Array.from({ length: count }, (_, k) =>
      spelled.replace(/(?<!\.)\b[a-z]\w*\b(?!:)/gi, own(k)),
    ).join(end);
  };
  const taken = (what, from) =>
    Array.from({ length: count }, (_, k) => `const ${what}${k} = ${from}[${k}];`).join('\n');
  return new Function(
    ...used,
    `return ({ rain, tmean, demand }, from, to, sets, states, series) => {
      ${taken('constants', 'sets')}
      ${taken('state', 'states')}
      ${taken('series', 'series')}
      ${repeated('const { liquid, recharge, depth, spill } = series;')}
      ${repeated(before)}
      for (let d = from; d < to; d++) {${repeated(body)}}
      ${repeated(after)}
      return Math.max(${repeated(`Math.abs(${closure})`, ', ')});
    }`,
  )(...used.map((name) => scope[name]));
}

/**
 * A run of all sets over a record, `count` side by side, each with its first year twice; it returns the sum of the last
 * depths.
 */
export function sideBySide(count, record, sets, startOf) {
  const run = interleaved(count);
  const days = record.rain.length;
  const series = Array.from({ length: count }, () => columnSeries(days));
  return () => {
    let sum = 0;
    for (let i = 0; i < sets.length; i += count) {
      const states = sets.slice(i, i + count).map(startOf);
      const some = sets.slice(i, i + count).map((p) => columnConstants(p));
      let closure = run(record, 0, STRETCH, some, states, series);
      for (let d = 0; d < days; d += STRETCH)
        closure += run(record, d, Math.min(d + STRETCH, days), some, states, series);
      if (!(closure <= 1e-9)) throw new Error(`${count} side by side do not close: ${closure} m`);
      for (const { depth } of series) sum += depth[days - 1];
    }
    return sum;
  };
}
