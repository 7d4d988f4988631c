/** A survey opened in a notebook: what was computed, and every part of the answer shown by a method of its own. */
import type { OptionName, Report, Result } from '../contract/index.js';
import { type Assessment, assess } from '../decision/index.js';
import { escapeHtml } from '../figures/escape.js';
import {
  findingsTable,
  heading,
  howDeepFigure,
  optionTable,
  quantityTable,
  riskDepthFigure,
  sectionFigure,
  type Table,
  tableOf,
  tippingTable,
  visible,
  waterMonthTable,
  waterYearFigure,
  whichWaterFigure,
  yearFigure,
} from '../figures/index.js';
import { reportOf } from '../report/index.js';
import { type Site, siteModel } from '../site/index.js';
import type { Survey } from '../survey/index.js';
import { ADVICE_NAMES, headlineOf, nextWords, todayWords, weatherGainWords } from '../text/index.js';
import { formatQuantity, type UnitSystem } from '../units/index.js';
import { type Html, show, untypeset } from './display.js';
import { tableOfFrame, toDataFrame } from './frame.js';
import { writeOutputs } from './outputs.js';
import { readSurvey } from './readSurvey.js';

/** How a survey is opened. */
export interface OpenOptions {
  /** of the draws, 1 unless said */
  seed?: number;
  /** sets of everything unknown, 512 unless said */
  samples?: number;
}

/**
 * Opens a survey for a notebook: simulates its water and judges the pond.
 * @param from - folder of the survey, or a file in it; or a survey as read or typed
 * @param options - seed and number of samples
 * @returns the pond; its methods show their part of the answer under the cell
 * @throws SurveyError with every problem when the survey is refused
 */
export function open(from: string | Survey, options: OpenOptions = {}): OpenedPond {
  return typeof from === 'string'
    ? new OpenedPond(readSurvey(from), options, from)
    : new OpenedPond(from, options);
}

/** A pond whose survey was read and whose water was simulated; `await` what it shows. */
export class OpenedPond {
  readonly site: Site;
  readonly assessment: Assessment;
  readonly report: Report;
  readonly result: Result;
  readonly units: UnitSystem;

  constructor(
    readonly survey: Survey,
    { seed = 1, samples }: OpenOptions,
    private readonly folder?: string,
  ) {
    this.site = siteModel(survey, { seed, samples });
    this.assessment = assess(this.site);
    this.report = reportOf(this.assessment);
    this.result = this.report.result;
    this.units = this.report.units;
  }

  /** A depth in the survey's units; m. */
  length(metres: number): string {
    return formatQuantity(metres, 'depth', this.units);
  }

  /** A level above the lowest natural ground at the rim, in the survey's units; m. */
  level(metres: number): string {
    return formatQuantity(metres, 'level', this.units);
  }

  /** Why options are not possible, where they are not. */
  whyNot(...options: OptionName[]): string {
    return this.result.options
      .filter(({ option }) => options.includes(option))
      .map((one) => `${ADVICE_NAMES[one.option].toLowerCase()}: ${one.possible ? 'possible' : one.why_not}`)
      .join('; ');
  }

  /** The answer as an order, how far it holds, how sure it is, and the rules that keep it so. */
  async verdict(): Promise<void> {
    const { answer, margin, otherwise, chance, inHand, next } = headlineOf(this.report, this.units);
    const rules = this.result.recommendation.rules.map(({ text }) => text);
    await show(
      markedUp(answer, [
        margin,
        otherwise,
        chance,
        `Safety margin: ${inHand}`,
        `Next: ${next}`,
        ...rules.map((rule) => `– ${rule}`),
      ]),
    );
  }

  /** Which water wins: full, emptied with nothing done, emptied as recommended. */
  waters(): Promise<void> {
    return show(whichWaterFigure(this.report, this.units));
  }

  /** How deep with what: a bar an option. */
  depths(): Promise<void> {
    return show(howDeepFigure(this.report, this.units));
  }

  /** The year: water, looks, when it may be dug and emptied. */
  year(): Promise<void> {
    return show(yearFigure(this.report, this.units));
  }

  /** Depth to the water outside day by day, with the looks and the pond's own level; to zoom into. */
  water(): Promise<void> {
    return show(waterYearFigure(this.report, this.units));
  }

  /** The pond cut through, with the ground, the waters and the drain. */
  section(): Promise<void> {
    return show(sectionFigure(this.report, this.units));
  }

  /** The chance of failing in a year against depth, a line an option; to zoom into. */
  risk(): Promise<void> {
    return show(riskDepthFigure(this.report, this.units));
  }

  /** The options side by side. */
  options(): Promise<void> {
    return this.table(optionTable(this.report, this.units));
  }

  /** Water by month, and how low the pond may go. */
  months(): Promise<void> {
    return this.table(waterMonthTable(this.report, this.units));
  }

  /** The layers of the holes, and how fast water moves in them. */
  ground(): Promise<void> {
    const speed = (perSecond: number) => formatQuantity(perSecond, 'permeability', this.units);
    return this.table(
      tableOf(
        ['hole', 'from', 'to', 'texture', 'water moves', 'at least', 'at most', 'known from'],
        this.result.ground.layers.map(({ pit, top_m, bottom_m, texture, ksat_m_s, evidence }) => [
          pit,
          this.length(top_m),
          this.length(bottom_m),
          texture,
          speed(ksat_m_s.p50),
          speed(ksat_m_s.p10),
          speed(ksat_m_s.p90),
          evidence.join(', '),
        ]),
      ),
    );
  }

  /** What to buy and to dig for the drain that is recommended. */
  async drain(): Promise<void> {
    if (this.result.drain) await this.table(quantityTable(this.report, this.units));
    else await show(markedUp('No drain is recommended: there is nothing to buy or dig for one.', []));
  }

  /** What was assumed because the survey does not say. */
  assumptions(): Promise<void> {
    return this.table(
      tableOf(
        ['assumed', 'value', 'unit', 'why'],
        this.result.assumptions.map(({ item, value, unit, reason }) => [item, value, unit, reason]),
      ),
    );
  }

  /** Where the answer turns into another. */
  turns(): Promise<void> {
    return this.table(tippingTable(this.report, this.units));
  }

  /** The answer in a line, whether the pond may be lowered today, and what to look up or measure next. */
  next(): Promise<void> {
    const { answer, margin } = headlineOf(this.report, this.units);
    return show(
      markedUp('What to find out next', [
        [answer, margin].join(' '),
        todayWords(this.report, this.units),
        ...nextWords(this.report),
        weatherGainWords(this.report, this.units),
      ]),
    );
  }

  /** What was hard to believe or not used in the survey. */
  async warnings(): Promise<void> {
    if (this.result.warnings.length > 0) await this.table(findingsTable(this.result));
  }

  /** Shows a table as a data frame, headings with their units. */
  async table({ name, columns, rows }: Table): Promise<void> {
    const frame = await toDataFrame(tableOf(columns.map(heading), rows));
    await show({ ...tableOfFrame(frame), name });
  }

  /** Writes the page, the card, the tables and `result.json` into a folder. */
  save(out: string): Promise<void> {
    return writeOutputs(this.assessment, out, this.folder);
  }
}

/** A heading and paragraphs, the same in plain text. */
function markedUp(title: string, paragraphs: readonly string[]): Html {
  const said = paragraphs.filter(Boolean);
  return {
    html: untypeset(
      `<h3>${escapeHtml(visible(title))}</h3>${said.map((words) => `<p>${escapeHtml(visible(words))}</p>`).join('')}`,
    ),
    alt: [title, ...said].map(visible).join('\n'),
  };
}
