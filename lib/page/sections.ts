/** The parts of the page below the verdict. */
import { optionTable, quantityTable, waterMonthTable } from '../figures/tables.js';
import { ADVICE_NAMES, chanceText, linkWords, monthName, ruleWords, sentence } from '../figures/words.js';
import { monthWords, type Report } from '../risk/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { acceptedRisksTable } from './acceptedRisks.js';
import { CAUTIONS } from './cautions.js';
import { list, paragraph, section, table, text } from './markup.js';
import { upliftCheck, upliftLine } from './upliftCheck.js';
import { advisedOption, flowWords, placeWords } from './verdict.js';

/** Rules of use with their months. */
export function rulesSection({ result }: Report, units: UnitSystem): string {
  const rules = result.recommendation.rules.map(({ code, months, level_m, text: words }) => {
    const when = [
      ...(months && months.length > 0 ? [monthWords(months)] : []),
      ...(level_m === undefined ? [] : [formatQuantity(level_m, 'level', units)]),
    ].join(', ');
    return `<strong>${text(ruleWords(code))}</strong>${when ? ` <span class="when">${text(when)}</span>` : ''}<br>${text(words)}`;
  });
  return section('rules', 'What to do', list(rules));
}

/** What was compared, what is not possible, and what another accepted chance would change. */
export function optionsSection(report: Report, units: UnitSystem): string {
  const { options } = report.result;
  const possible = options.filter((option) => option.possible);
  const out = options
    .filter((option) => !option.possible)
    .map(
      ({ option, why_not }) =>
        `<strong>${ADVICE_NAMES[option]}</strong>: ${text(why_not ?? 'no reason given')}`,
    );
  const compared = optionTable({ ...report, result: { ...report.result, options: possible } }, units);
  return section(
    'options',
    'Options',
    table(compared, 'options'),
    paragraph(
      `Chances are counted over draws of everything unknown and all years of the weather; accepted is ${chanceText(report.accepted_risk)} a year. ` +
        'Chances per dig are counted for one excavation and not added to those per year.',
      'note',
    ),
    out.length > 0 ? `<p>Not possible or not needed here:</p>${list(out)}` : '',
    table(acceptedRisksTable(report, units)),
  );
}

export function monthsSection(report: Report, units: UnitSystem): string {
  return section(
    'months',
    'Month by month',
    table(waterMonthTable(report, units)),
    paragraph(
      'Depths are below, levels above (+) or below (−) the lowest natural ground at the rim. The floor counts as dry where the water table stays below the depth wished.',
      'note',
    ),
  );
}

/** The drain with what it must carry, what it can, and what to buy. */
export function drainSection(report: Report, units: UnitSystem): string {
  const { drain } = report.result;
  if (!drain) return '';
  const fall =
    drain.fall_available_m === null
      ? 'The water is pumped, so no fall is needed.'
      : `Fall from the underside of the bed to the outlet: ${formatQuantity(drain.fall_available_m, 'length', units)}; needed: ${formatQuantity(drain.fall_needed_m, 'length', units)}.`;
  const links = Object.entries(drain.reserve).map(([link, ratio]) =>
    text(
      `${linkWords(link)}: ${ratio >= 100 ? 'over 100' : Number(ratio.toPrecision(2))} times what is needed`,
    ),
  );
  return section(
    'drain',
    'The drain',
    paragraph(
      `A pipe of ${formatQuantity(drain.pipe_diameter_m, 'length', units)} can carry ${formatQuantity(drain.pipe_capacity_m3_s * 60, 'volume', units)} a minute. ` +
        `What reaches it: ${flowWords(drain, units)}. ${fall} The weakest link: ${linkWords(drain.weakest_link)}.`,
    ),
    list(links),
    table(quantityTable(report, units)),
  );
}

/** What the works change beyond the garden fence, as far as it was computed. */
export function neighbourSection(report: Report, units: UnitSystem): string {
  const { drain, recommendation } = report.result;
  const { pond } = report;
  const area = formatQuantity(
    (pond.shape === 'box' ? 1 : Math.PI / 4) * pond.length_m * pond.width_m,
    'area',
    units,
  );
  const words = [
    `The pond takes ${area} of ground. Rain on it fills it, and leaves over its lowest rim when it is full: look where that runs before the rim is set.`,
  ];
  if (!drain) {
    words.push(
      'Nothing is drained or pumped, so no water comes to a neighbour that did not come before, and no ground next door is drawn down.',
    );
  } else {
    words.push(
      `The drain gathers water that seeped away over the slope before, and brings it to one point: ${placeWords(report, units)}. There it comes to ${flowWords(drain, units)}.`,
      'It lowers the water in the clay around the pond only; the effect on ground next door was not computed. Next to a house on shrinkable clay, ask an engineer first.',
      drain.fall_available_m === null
        ? 'When the power fails the pump stops: nothing comes to the outlet, and the water stands under the liner instead.'
        : 'When the pipe blocks, nothing comes to the outlet and the water stands under the liner instead. Owner or successor looks into it every autumn.',
    );
  }
  if (recommendation.raise_m > 0)
    words.push(
      `The rim is raised by ${formatQuantity(recommendation.raise_m, 'length', units)}: keep the old ground beside it open as the way for water.`,
    );
  return section('neighbour', 'What changes next door', ...words.map((each) => paragraph(each)));
}

/** The deterministic check, undrained and as recommended. */
export function checkSection(report: Report, units: UnitSystem): string {
  const { recommendation, options } = report.result;
  const depth = recommendation.depth_m > 0 ? recommendation.depth_m : report.pond.depth_m;
  const advised = advisedOption(report);
  const undrained = options.find(({ option }) => option === 'no-drain');
  const checked = [undrained, advised === undrained ? undefined : advised].flatMap((option) =>
    option ? [{ option, raise: option.option === 'no-drain' ? 0 : recommendation.raise_m }] : [],
  );
  return section(
    'check',
    'One check by hand, for the inspector',
    paragraph(
      'Full pond, uplift of the floor, EN 1997-1:2004 limit state UPL (2.4.7.4), recommended factors of table A.15: 1.0 on what lifts, 0.9 on what holds.',
    ),
    ...checked.map(({ option, raise }) =>
      paragraph(upliftLine(upliftCheck(report, option, raise, depth), units), 'check'),
    ),
    paragraph(
      'Weight of water 9.81 kN/m³ (62.4 lb/ft³), the liner weightless, a slab not counted. The 1 in 20 high is carried from the 1 in 10 and middle highs by a normal distribution.',
      'note',
    ),
  );
}

/** What would change the answer. */
export function turnsSection({ result }: Report, units: UnitSystem): string {
  const value = (amount: number, unit: string) =>
    unit === 'm'
      ? formatQuantity(amount, 'level', units)
      : unit === 'm/s' && amount > 0
        ? formatQuantity(amount, 'conductivity', units)
        : `${Number(amount.toPrecision(3))} ${unit}`;
  const points = result.tipping_points.map(({ input, value: at, unit, from, to }) =>
    text(
      `${sentence(input)} at ${value(at, unit)}: from “${ADVICE_NAMES[from].toLowerCase()}” to “${ADVICE_NAMES[to].toLowerCase()}”.`,
    ),
  );
  const next = result.recommendation.measure_next.map(({ what, where, month, chance_to_change }) =>
    text(
      `${sentence(what)}, at ${where}${month === null ? '' : `, in ${monthName(month)}`}: chance to change the answer ${chanceText(chance_to_change)}.`,
    ),
  );
  return section(
    'turns',
    'What would change the answer',
    points.length > 0 ? `<p>The answer turns where one value alone comes to:</p>${list(points)}` : '',
    next.length > 0 ? `<p>To measure next:</p>${list(next)}` : '',
  );
}

export function cautionsSection({ result }: Report): string {
  const items = CAUTIONS.filter(({ drained }) => !drained || result.drain !== null).map(
    ({ title, text: words }) => `<strong>${title}.</strong> ${text(words)}`,
  );
  return section('cautions', 'Cautions', list(items));
}
