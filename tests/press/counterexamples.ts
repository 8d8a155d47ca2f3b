/**
 * Set-ups, all legal and none of the trade, in which a rule of thumb fails in the model. They were found by searching
 * 20,000 random set-ups of 2 to 4 inks over the whole legal range (first sheet, an early sheet, settled), and are kept so
 * that nobody takes the rule for more than it is.
 */
import type { Paper } from '../../src/physics/paper.ts'
import { papers } from '../../src/physics/paper.ts'
import type { Ink, Press, Reading, SetUp } from '../../src/press/setup.ts'

function setUp(inks: Omit<Ink, 'name'>[], paper: Partial<Paper>, press: Partial<Press>, reading: Reading): SetUp {
  return {
    inks: inks.map((ink, unit) => ({ ...ink, name: `ink ${unit + 1}` })),
    paper: { ...papers.coated, ...paper },
    press: {
      kind: 'web',
      speed: 10,
      interval: 1,
      intervalPinned: true,
      temperature: 25,
      dampening: 1,
      waterless: true,
      ...press,
    },
    reading,
    seed: 1,
  }
}

/**
 * The third sheet after the second ink's tack rises from 18.264 to 22.48: it leaves 4 % more of itself on wet ink. Paper
 * that tears feeds the blanket with what it tears off, and harder ink tears more.
 */
export const moreTackMoreFilm = {
  unit: 1,
  tack: 22.480784,
  setUp: setUp(
    [
      { tack: 10.778, film: 6.404, coverage: 0.39436, dampening: 1.416 },
      { tack: 18.264, film: 2.057, coverage: 0.60898, dampening: 1.752 },
    ],
    {
      ...papers['light-weight coated'],
      freeSplit: 0.1035,
      absorbency: 1.1125,
      surfaceStrength: 34.445,
      contactRate: 8.02,
      holdLimit: 5.1193,
      settingGain: 1.964,
      evenness: 6.5,
      wetLoss: 0.1426,
    },
    { speed: 11.7063, interval: 8.48456, temperature: 28.4 },
    { sheet: 3 },
  ),
}

/**
 * At 6.15 instead of 3.49 m/s the settled sheet is torn in 80 % instead of 81 %: where nearly all is torn, films grow so
 * different that the pull at a later unit falls.
 */
export const moreSpeedLessPicking = {
  speed: 6.1492846,
  setUp: setUp(
    [
      { tack: 3.748, film: 7.797, coverage: 0.86672, temperature: 26 },
      { tack: 35.934, film: 5.725, coverage: 0.64818, temperature: 43.15, dampening: 0.288, soiled: 0.397 },
    ],
    {
      freeSplit: 0.528,
      surfaceStrength: 5,
      contactRate: 8.416,
      holdLimit: 2.6344,
      settingGain: 0.774,
      settingTime: 5.81105,
      evenness: 6.5,
      wetLoss: 0.177,
    },
    { speed: 3.4914, interval: 5.86245, temperature: 44.05, dampening: 1.796, waterless: false },
    'settled',
  ),
}

/** The same with a stronger surface, 17.6 instead of 15.9 tack units: 99.72 % torn instead of 99.65 %. */
export const strongerPaperMorePicking = {
  surfaceStrength: 17.57672,
  setUp: setUp(
    [
      { tack: 7.32, film: 6.124, coverage: 0.43454, temperature: 57.25 },
      { tack: 29.892, film: 2.68, coverage: 0.86868, temperature: 36.5 },
      { tack: 37.986, film: 4.346, coverage: 0.84124, temperature: 37.1 },
      { tack: 22.216, film: 3.863, coverage: 0.24834, temperature: 30.05 },
    ],
    {
      ...papers.uncoated,
      freeSplit: 0.103,
      absorbency: 2.04625,
      surfaceStrength: 15.92,
      contactRate: 5.4262,
      holdLimit: 9.9703,
      settingGain: 1.982,
      settingTime: 8.47765,
      evenness: 7,
    },
    { speed: 19.9409, interval: 3.36995, temperature: 46.75 },
    'settled',
  ),
}

/**
 * 6.34 s instead of 3.75 s between units: the fourth ink's trap on the second falls from 22.3 to 21.8 %, settled, as it
 * leaves its unit. With more time it lifts less of the soft ink below, so its store stays cleaner and itself harder.
 */
export const moreTimeLessTrap = {
  interval: 6.34305385,
  earlier: 1,
  later: 3,
  setUp: setUp(
    [
      { tack: 23.736, film: 6.733, coverage: 0.30126, temperature: 47.5 },
      { tack: 7.624, film: 2.022, coverage: 0.16308 },
      { tack: 10.588, film: 6.859, coverage: 0.59134, temperature: 20.4 },
      { tack: 32.324, film: 1.903, coverage: 0.02098, temperature: 27.45 },
    ],
    {
      freeSplit: 0.5625,
      absorbency: 0.745,
      surfaceStrength: 1e9,
      contactRate: 7.9012,
      settingGain: 1.78,
      settingTime: 1.0052,
      evenness: 7.5,
    },
    { speed: 15.3705, interval: 3.74881, temperature: 42.05 },
    'settled',
  ),
}

/**
 * Two settled states: from a clean store the soft third ink stays clean, since it splits before the paper tears; from one
 * that begins a third foreign it hardens, tears the paper, takes the dry ink along and ends with nothing of its own. Found
 * only where a reading tears more than 90 % of a patch (none in 900 set-ups that tear less than 5 %).
 */
export const twoSettledStates = {
  unit: 2,
  soiled: 0.3365,
  setUp: setUp(
    [
      { tack: 27.992, film: 6.033, coverage: 1, temperature: 28.55, dampening: 0.96 },
      { tack: 38.974, film: 3, coverage: 0.3, temperature: 54.8, soiled: 0.3455, dryBefore: true },
      { tack: 6.332, film: 3, coverage: 0.3, temperature: 14 },
    ],
    {
      ...papers['weak uncoated'],
      freeSplit: 0.1015,
      absorbency: 3.96625,
      surfaceStrength: 14.945,
      contactRate: 4.8322,
      holdLimit: 8.4754,
      settingGain: 1.884,
      settingTime: 0.4,
      wetLoss: 0.2,
    },
    { kind: 'sheet-fed', speed: 0.4379, interval: 0.03997, temperature: 10.2, dampening: 1.688, waterless: false },
    'settled',
  ),
}
