/** What the page holds of the survey, and the page without what its owner keeps to themselves. */
import type { Report } from '../contract/index.js';
import type { WorkedPart } from '../report/index.js';
import type { Survey } from '../survey/index.js';
import type { Photos } from './record.js';

/** Parts of a survey that may be left out of a page; the answer is still that of the whole survey. */
export const PRIVATE_PARTS = ['photos', 'looks', 'prices'] as const;
/** One of {@link PRIVATE_PARTS}. */
export type PrivatePart = (typeof PRIVATE_PARTS)[number];

/** What a page is made of. */
export interface PageContent {
  report: Report;
  worked: WorkedPart[];
  photos: Photos;
  /** the survey that the page's script computes with; absent: the page computes nothing */
  survey?: Survey | undefined;
}

/**
 * The content of a page without some parts of the survey. Without its looks into the holes nothing can be computed
 * again, so the survey goes with them.
 */
export function leaveOut(parts: readonly PrivatePart[], content: PageContent): PageContent {
  return parts.reduce((kept, part) => WITHOUT[part](kept), content);
}

const NO_PRICES = { cost: null, unpriced: [] };

const WITHOUT: Record<PrivatePart, (content: PageContent) => PageContent> = {
  photos: ({ report, survey, ...content }) => ({
    ...content,
    photos: {},
    report: {
      ...withoutWarnings(report, 'photo-left-out'),
      pits: report.pits.map((pit) => ({ ...pit, photo: null })),
    },
    survey: survey && { ...survey, layers: survey.layers.map(({ photo: _, ...layer }) => layer) },
  }),
  prices: ({ report, survey, ...content }) => ({
    ...content,
    report: withoutWarnings(
      {
        ...report,
        result: {
          ...report.result,
          build: report.result.build && { ...report.result.build, ...NO_PRICES },
          options: report.result.options.map((option) =>
            option.work ? { ...option, work: { ...option.work, ...NO_PRICES } } : option,
          ) as Report['result']['options'],
        },
      },
      'prices.csv',
    ),
    survey: survey && { ...survey, prices: [] },
  }),
  looks: ({ report, worked, photos }) => ({
    report: {
      ...withoutWarnings(report, 'water.csv'),
      dips: [],
      fitted: [],
      lower_today: null,
      result: { ...withoutWarnings(report, 'water.csv').result, spots: [] },
    },
    worked: worked
      .map((part) => ({
        ...part,
        steps: part.steps.filter(({ inputs }) => !inputs.some(({ from }) => from.includes('water.csv'))),
        note: part.note.replace(/water\.csv lines? \d+(?: to \d+)?/g, 'looks left out'),
      }))
      .filter(({ steps }) => steps.length > 0),
    photos,
  }),
};

/** Without the warnings of a kind or of a file, which quote what stands there. */
function withoutWarnings(report: Report, kindOrFile: string): Report {
  const warnings = report.result.warnings.filter(
    ({ code, file }) => code !== kindOrFile && file !== kindOrFile,
  );
  return { ...report, result: { ...report.result, warnings } };
}

/** One and many of what a survey holds. */
const COUNTED: [of: (survey: Survey) => number, one: string, many: string][] = [
  [
    ({ origins }) => Object.keys(origins.site).length + Object.keys(origins.pond).length,
    'fact of site and pond',
    'facts of site and pond',
  ],
  [({ layers }) => layers.length, 'layer', 'layers, with their notes'],
  [({ looks }) => looks.length, 'look into a hole', 'looks into the holes'],
  [({ soakage }) => soakage.length, 'look in a soakage test', 'looks in soakage tests'],
  [({ heads }) => heads.length, 'water level known', 'water levels known'],
  [({ levels }) => levels.length, 'levelled point', 'levelled points'],
  [({ weather }) => weather.length, 'day of weather', 'days of weather'],
  [({ climate }) => climate.length, 'month of climate', 'months of climate'],
  [({ prices }) => prices.length, 'price', 'prices'],
];

/** What of a survey a page holds, part by part. */
export function heldWords({ survey, photos }: Pick<PageContent, 'survey' | 'photos'>): string[] {
  const words = (number: number, one: string, many: string) =>
    number === 0 ? [] : [`${number} ${number === 1 ? one : many}`];
  return [
    ...(survey ? COUNTED.flatMap(([of, one, many]) => words(of(survey), one, many)) : []),
    ...words(Object.keys(photos).length, 'photo', 'photos'),
  ];
}
