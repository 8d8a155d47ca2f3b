/**
 * The pull of a film: the force, in tack units, at which it splits.
 *
 *     F = T (U/U0)^a exp(-c (theta - theta0)) (h0/h)^beta * setting * water
 *
 * Directions are published: tack rises with speed (Yang, Applied Mechanics and Materials 723, 2015), falls with
 * temperature, rises as the film thins (handbook statements; the form after Stefan, from memory). The tack scale itself
 * is arbitrary and belongs to an instrument (ISO 12634, ASTM D4361). Everything works in natural logarithms because
 * only ratios of pulls decide which film breaks.
 */
import type { Paper } from './paper.ts'

/** m/s. Surface speed at which a film of tack T pulls T; chosen so that a sheet-fed press runs near it. */
export const referenceSpeed = 2
/** um. Film thickness at which a film of tack T pulls T; about what a blanket brings (2 um on the blanket, handbook). */
export const referenceThickness = 2
/** degC. Film temperature at which a film of tack T pulls T; a usual pressroom temperature (common practice). */
export const referenceTemperature = 25

/** Exponent a of speed: chosen so that pull rises with speed but ever more slowly (direction: Yang, 2015). */
export const speedExponent = 0.35
/** Per degC: tack falls about 2 to 3 % per degC (direction published, number from memory). */
export const temperatureRate = 0.025
/** Exponent beta of thickness: chosen so that halving a film raises its pull by 11 % (direction published). */
export const thicknessExponent = 0.15

/** Share of its pull that a fresh film loses to emulsified water at normal dampening (sources disagree, so a parameter). */
const waterLossAtNormal = 0.15
/** s. Time in which that loss falls to 1/e on the sheet: chosen so that most is regained before the next unit. */
const waterRecoveryTime = 0.06

/** ln of the speed factor at surface speed `speed` (m/s, above 0). */
export function speedTerm(speed: number): number {
  return speedExponent * Math.log(speed / referenceSpeed)
}

/** ln of the temperature factor at film temperature `temperature` (degC). */
export function temperatureTerm(temperature: number): number {
  return -temperatureRate * (temperature - referenceTemperature)
}

/** ln of the thickness factor for a film of total thickness `thickness` (um, above 0), held part included. */
export function thicknessTerm(thickness: number): number {
  return thicknessExponent * Math.log(referenceThickness / thickness)
}

/** Share of pull lost to water on the blanket at `dampening` (0 none, 1 normal, at most 2). */
export function waterLoss(dampening: number): number {
  return waterLossAtNormal * dampening
}

/** ln of the water factor, `seconds` after the film left the blanket (0 on the blanket itself); `loss` from {@link waterLoss}. */
export function waterTerm(loss: number, seconds: number): number {
  return Math.log(1 - loss * Math.exp(-seconds / waterRecoveryTime))
}

/**
 * How far the paper's suction has raised the pull of a film lying on it `seconds` after printing, before the films
 * below slow it down: gamma (1 - exp(-t/tau)). It only ever rises; a very absorbent coating in truth starts at
 * its maximum and falls (TAGA Proceedings 1997), which this law does not show.
 */
export function settingRise(paper: Paper, seconds: number): number {
  return paper.settingGain * (1 - Math.exp((-seconds * paper.absorbency) / paper.settingTime))
}

/** ln of the setting factor; `rise` from {@link settingRise}, `wetBelow` the wet film (um) between this film and the paper. */
export function settingTerm(rise: number, wetBelow: number): number {
  return Math.log1p(rise / (1 + wetBelow))
}

/** The conditions of one film, for a readout of its pull. */
export interface FilmConditions {
  /** tack units, above 0 */
  tack: number
  /** m/s */
  speed: number
  /** degC */
  temperature: number
  /** um, total, held part included */
  thickness: number
  /** 0 none, 1 normal, at most 2 */
  dampening: number
  /** on the sheet: seconds since printing, and um of wet film below; absent on the blanket */
  onSheet?: { seconds: number; wetBelow: number; paper: Paper }
}

/** The pull (tack units) of one film under the stated conditions; the whole equation in one place. */
export function filmPull(film: FilmConditions): number {
  const sheet = film.onSheet
  return Math.exp(
    Math.log(film.tack) +
      speedTerm(film.speed) +
      temperatureTerm(film.temperature) +
      thicknessTerm(film.thickness) +
      waterTerm(waterLoss(film.dampening), sheet?.seconds ?? 0) +
      (sheet ? settingTerm(settingRise(sheet.paper, sheet.seconds), sheet.wetBelow) : 0),
  )
}
