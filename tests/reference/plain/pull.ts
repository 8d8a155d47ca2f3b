import { dot, exp, log } from 'mathjs'
import { type Film, thickness } from './film.ts'
import {
  coolingRate,
  referenceFilm,
  referenceSpeed,
  referenceTemperature,
  type Setup,
  speedExponent,
  thinnessExponent,
  unitTemperature,
  unitWater,
  waterTime,
} from './setup.ts'

/** Tack of a mixture: the geometric mean of the inks' tacks by share. */
function mixtureTack(film: Film, setup: Setup): number {
  const logTacks = setup.inks.map((ink) => log(ink.tack))
  return exp(dot(film, logTacks) / thickness(film))
}

/** T (U/U0)^a exp(-c (theta - theta0)) (h0/h)^beta: the part of the pull that is the same on blanket and sheet. */
function bareFilmPull(film: Film, unit: number, setup: Setup): number {
  const speed = (setup.press.speed / referenceSpeed) ** speedExponent
  const warmth = exp(-coolingRate * (unitTemperature(setup, unit) - referenceTemperature))
  const thinness = (referenceFilm / thickness(film)) ** thinnessExponent
  return mixtureTack(film, setup) * speed * warmth * thinness
}

/** Pull of the film on a unit's blanket, tack units. An empty plane never breaks. */
export function blanketPull(film: Film, unit: number, setup: Setup): number {
  if (thickness(film) === 0) return Infinity
  return bareFilmPull(film, unit, setup) * (1 - unitWater(setup, unit))
}

/**
 * Pull of a wet film on the sheet, tack units.
 * @param unit the unit that printed the film
 * @param elapsed s since then
 * @param wetBelow um of wet film between it and the paper
 */
export function sheetPull(film: Film, unit: number, elapsed: number, wetBelow: number, setup: Setup): number {
  if (thickness(film) === 0) return Infinity
  const { settingGain, settingTime } = setup.paper
  const setting = 1 + (settingGain * (1 - exp(-elapsed / settingTime))) / (1 + wetBelow)
  const water = 1 - unitWater(setup, unit) * exp(-elapsed / waterTime)
  return bareFilmPull(film, unit, setup) * setting * water
}
