/**
 * What the weather and the dips of the five invented surveys are made from; all numbers are our choice.
 * Of the first sixty weather seeds each survey took one whose record has a wet winter or two (above 1.3 times the
 * mean), an ordinary last winter, the one dipped, and no summer in which the water stays near the ground.
 */

/** A cool temperate year with rain in all months: 752 mm. */
const RAIN_BY_MONTH = [72, 54, 54, 50, 52, 55, 55, 62, 60, 80, 80, 78];
const MILD = { meanTemperature: 10.2, temperatureSwing: 6.8, winterRange: 5.5, summerRange: 10 };
const CLAY = {
  rootCapacity: 100,
  porosity: 0.03,
  recession: 0.015,
  baseDepth: 2,
  spillDepth: 0.02,
  extinctionDepth: 1.4,
};

const DIPS = [
  '2023-10-21',
  '2023-11-11',
  '2023-12-02',
  '2023-12-23',
  '2024-01-06',
  '2024-01-20',
  '2024-02-03',
  '2024-02-17',
  '2024-03-02',
  '2024-03-16',
  '2024-04-06',
  '2024-04-27',
  '2024-05-18',
  '2024-06-08',
  '2024-07-20',
  '2024-08-24',
];

export const SURVEYS = {
  'clay-hollow': {
    units: 'metric',
    latitude: 52,
    climate: { rainByMonth: RAIN_BY_MONTH, ...MILD },
    weatherSeed: 9,
    readingSeed: 11,
    store: CLAY,
    opened: '2023-09-16',
    dips: DIPS,
    pipes: [
      {
        pit: 'P1',
        floor: 1.6,
        openFrom: 0.9,
        holeDiameter: 0.1,
        bore: 0.032,
        ksat: 4e-9,
        offset: 0.01,
        note: 'slotted pipe in sand; clay seal from 0.9 m to the top',
      },
      {
        pit: 'P2',
        floor: 1.55,
        openFrom: 0.85,
        holeDiameter: 0.1,
        bore: 0.032,
        ksat: 6e-9,
        offset: 0.04,
        note: 'as P1',
      },
    ],
  },
  'clay-slope': {
    units: 'metric',
    latitude: 52.5,
    climate: { rainByMonth: RAIN_BY_MONTH, ...MILD },
    weatherSeed: 39,
    readingSeed: 12,
    store: CLAY,
    opened: '2023-09-23',
    dips: DIPS,
    pipes: [
      {
        pit: 'P1',
        floor: 1.7,
        openFrom: 0.9,
        holeDiameter: 0.1,
        bore: 0.032,
        ksat: 3.2e-7,
        offset: 0.05,
        note: 'slotted pipe in sand; clay seal from 0.9 m to the top',
      },
      {
        pit: 'P2',
        floor: 1.7,
        openFrom: 0.9,
        holeDiameter: 0.1,
        bore: 0.032,
        ksat: 2.7e-7,
        offset: 0.02,
        note: 'as P1',
      },
    ],
  },
  'loam-terrace': {
    units: 'us',
    latitude: 44,
    climate: {
      rainByMonth: RAIN_BY_MONTH.map((mm) => mm * 0.865),
      meanTemperature: 10,
      temperatureSwing: 8.5,
      winterRange: 7,
      summerRange: 12,
    },
    weatherSeed: 60,
    readingSeed: 13,
    store: { ...CLAY, porosity: 0.18, recession: 0.01, baseDepth: 3.1 },
    opened: '2023-09-09',
    dips: DIPS,
    pipes: [
      {
        pit: 'P1',
        floor: 2.8956,
        openFrom: 1.8288,
        holeDiameter: 0.1016,
        bore: 0.0381,
        ksat: 8e-5,
        offset: 0,
        note: 'slotted pipe in the gravelly sand; clay seal above 6 ft',
      },
      {
        pit: 'P2',
        floor: 2.8956,
        openFrom: 1.8288,
        holeDiameter: 0.1016,
        bore: 0.0381,
        ksat: 8e-5,
        offset: -0.05,
        note: 'as P1',
      },
    ],
  },
  'meadow-scrape': {
    units: 'metric',
    latitude: 51,
    climate: { rainByMonth: RAIN_BY_MONTH, ...MILD },
    weatherSeed: 9,
    readingSeed: 14,
    store: CLAY,
    opened: '2023-09-30',
    dips: DIPS,
    pipes: [
      {
        pit: 'P1',
        floor: 1.3,
        openFrom: 0.7,
        holeDiameter: 0.1,
        bore: 0.032,
        ksat: 5e-8,
        offset: 0.03,
        note: 'slotted pipe in sand; clay seal from 0.7 m to the top',
      },
    ],
  },
  'old-garden-pond': {
    units: 'metric',
    latitude: 52,
    climate: { rainByMonth: RAIN_BY_MONTH, ...MILD },
    weatherSeed: 39,
    readingSeed: 15,
    store: CLAY,
    opened: '2023-09-30',
    dips: DIPS,
    pipes: [
      {
        pit: 'P1',
        floor: 1.5,
        openFrom: 0.8,
        holeDiameter: 0.1,
        bore: 0.032,
        ksat: 1e-7,
        offset: 0.04,
        note: 'slotted pipe in sand; clay seal from 0.8 m to the top',
      },
    ],
    // An old drain holds the water under the liner down.
    dipPipe: 0.98,
  },
};
