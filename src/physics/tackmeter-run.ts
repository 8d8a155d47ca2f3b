/**
 * The tackmeter running: ink is metered on, spreads, warms or cools, and loses solvent; the torque builds and the needle
 * follows. A pure step from one state to the next; whoever shows it hands in the time that has passed.
 *
 * All times and rates here are chosen, so that a reading stands still well before the standard minute and creeps up
 * visibly over the minutes after it. Left out: heat from the rollers' own friction, and ink flung off at high speed.
 */
import { repeatability, readingNoise } from './repeatability.ts'
import type { TackConditions, Tackmeter } from './tackmeter.ts'
import { filmOnRollers, laboratoryTackmeter, pullPerTack, readingOfPull } from './tackmeter.ts'

/** What can be dialled in, each with the step of its control. */
export const tackmeterRanges = {
  /** ml */
  volume: { least: 0.1, most: 3, step: 0.01 },
  /** degC */
  temperature: { least: 15, most: 45, step: 0.1 },
  /** rpm of the main roller; 0 stands still */
  speed: { least: 0, most: 3000, step: 10 },
} as const

/** An ink as the instrument meets it. */
export interface TestInk {
  /** tack units: its reading at the laboratory instrument's standard condition */
  tack: number
  /** how fast its solvent leaves, 1 for a usual sheet-fed ink */
  volatility: number
}

export interface TackmeterState {
  /** s since the ink was metered on */
  time: number
  /** ml metered on */
  volume: number
  /** rpm, degC: what the rollers have reached */
  speed: number
  temperature: number
  /** how evenly the ink is spread, 0 to 1; unevenly spread ink pulls that much less */
  spread: number
  /** share of the ink's solvent that has evaporated */
  evaporated: number
  /** on the instrument's scale: where the needle stands, without reading noise */
  needle: number
}

/** s to get 63 % of the way to a new speed, a new temperature, a new torque. */
const speedLag = 2
const temperatureLag = 40
const needleLag = 1.5
/** Turns of the main roller in which unevenness falls to 1/e. */
const spreadingTurns = 60

/** Share of a usual ink's volume that can evaporate. */
const solventShare = 0.25
/** 1/s: evaporation at 32.2 degC and the usual speed of 4.8 m/s, for volatility 1. */
const evaporationRate = 1 / 1500
/** degC that double evaporation (rule of thumb, from memory). */
const doublingTemperature = 10
/** Evaporation goes with the root of the air's speed past the rollers. */
const airExponent = 0.5
/** ln of tack gained when all solvent is gone: chosen so that a usual ink gains about 5 % a minute. */
const stiffening = 1.3

/** Ink just metered onto rollers that stand still at `temperature` (degC). */
export function meterInk(instrument: Tackmeter, volume: number, temperature: number): TackmeterState {
  const needle = readingOfPull(instrument, 0)
  return { time: 0, volume, speed: 0, temperature, spread: 0, evaporated: 0, needle }
}

/** s: the longest stretch over which everything but the quantity stepped is taken as standing still. */
const longestStep = 0.05

/** The state `seconds` later, with speed and temperature dialled to `set`. Any length of time, 0 or more. */
export function stepTackmeter(
  instrument: Tackmeter,
  ink: TestInk,
  state: TackmeterState,
  set: Omit<TackConditions, 'volume'>,
  seconds: number,
): TackmeterState {
  const steps = Math.ceil(seconds / longestStep)
  let next = state
  for (let step = 0; step < steps; step++) next = shortStep(instrument, ink, next, set, seconds / steps)
  return next
}

function shortStep(
  instrument: Tackmeter,
  ink: TestInk,
  state: TackmeterState,
  set: Omit<TackConditions, 'volume'>,
  dt: number,
): TackmeterState {
  const speed = approach(state.speed, set.speed, dt / speedLag)
  const temperature = approach(state.temperature, set.temperature, dt / temperatureLag)
  const spread = approach(state.spread, 1, ((speed / 60) * dt) / spreadingTurns)
  const evaporated = approach(state.evaporated, 1, dt * ink.volatility * rateAt(temperature, speed))
  const now = { ...state, time: state.time + dt, speed, temperature, spread, evaporated }
  return {
    ...now,
    needle: approach(state.needle, readingOfPull(instrument, pullNow(instrument, ink, now)), dt / needleLag),
  }
}

/** Goes towards `aim` as a lag does: `share` is the time passed over the time constant. */
function approach(from: number, aim: number, share: number): number {
  return aim + (from - aim) * Math.exp(-share)
}

/** 1/s */
function rateAt(temperature: number, speed: number): number {
  const warmth = 2 ** ((temperature - standard.temperature) / doublingTemperature)
  return evaporationRate * warmth * (speed / standard.speed) ** airExponent
}

/** The condition at which an ink's tack is stated; the minute of evaporation that goes with it is part of that tack. */
const standard = { temperature: 32.2, speed: 1200, seconds: 60 }

function evaporatedAtStandard(ink: TestInk): number {
  return 1 - Math.exp(-standard.seconds * evaporationRate * ink.volatility)
}

/** The pull (tack units) of the film on the rollers at this moment; 0 when they stand still. */
export function pullNow(instrument: Tackmeter, ink: TestInk, state: TackmeterState): number {
  if (state.speed < 1) return 0
  const lost = state.evaporated - evaporatedAtStandard(ink)
  const volume = state.volume * (1 - solventShare * lost)
  const tack = ink.tack * Math.exp(stiffening * lost)
  return state.spread * tack * pullPerTack(instrument, { ...state, volume })
}

/** um of ink on the rollers at this moment. */
export function filmNow(instrument: Tackmeter, { volume, evaporated }: TackmeterState): number {
  return filmOnRollers(instrument, volume * (1 - solventShare * evaporated))
}

/** N m at the measuring roller for a pull (tack units): a gram-force metre a unit, as such scales are cut (from memory). */
export function torqueOf(pull: number): number {
  return 0.00981 * pull
}

/** Standard deviation of a reading, on the instrument's own scale: both instruments repeat equally well. */
export function readingDeviation({ perPull }: Tackmeter): number {
  return (repeatability.tackmeter * perPull) / laboratoryTackmeter.perPull
}

/** One reading off the needle, with the noise of the `index`-th reading under `seed`. */
export function readNeedle(instrument: Tackmeter, state: TackmeterState, seed: number, index: number): number {
  return state.needle + readingDeviation(instrument) * readingNoise(seed, needleStream, index)
}

const needleStream = 71
