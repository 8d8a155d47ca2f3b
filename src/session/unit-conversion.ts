/**
 * Conversions by mathjs. Its units alone would bring complex numbers, big numbers and matrices along: here they get the
 * arithmetic of plain numbers, and of fractions, in which the library keeps the degrees of temperature.
 */
import type { Unit } from 'mathjs'
import {
  create,
  createAddScalar,
  createCreateUnit,
  createFractionClass,
  createIsNumeric,
  createMultiplyScalar,
  createNumber,
  createSubtractScalar,
  createUnitClass,
  createUnitFunction,
  factory,
} from 'mathjs'
import {
  absDependencies,
  divideScalarDependencies,
  equalDependencies,
  fixDependencies,
  formatDependencies,
  powDependencies,
  roundDependencies,
} from 'mathjs/number'
import type { UnitName } from './unit-names.ts'
import { inkDensity, sheetPitch } from './unit-names.ts'

const { createUnit, unit } = create({
  absDependencies,
  divideScalarDependencies,
  equalDependencies,
  fixDependencies,
  formatDependencies,
  powDependencies,
  roundDependencies,
  createAddScalar,
  createCreateUnit,
  createFractionClass,
  createIsNumeric,
  createMultiplyScalar,
  createNumber,
  createSubtractScalar,
  createUnitClass,
  createUnitFunction,
  // Only reactive power is measured in complex numbers.
  withoutComplex: factory('Complex', [], () => ({ I: NaN })),
  withoutBigNumber: factory('BigNumber', [], () => null),
}) as {
  createUnit: (name: string, definition: string) => Unit
  unit: (value: number, name: string) => Unit
}

// Speed becomes sheets an hour once a sheet counts as the length it takes on the press.
createUnit('sheet', `${sheetPitch} m`)
// A film's thickness becomes the weight of a square metre of it: 1 um of density rho is rho g/m2.
createUnit('filmWeight', `${1 / inkDensity} um`)

const conversions: Record<UnitName, { from: string; to: string }> = {
  'm/s': { from: 'm/s', to: 'm/s' },
  'm/min': { from: 'm/s', to: 'm/min' },
  'ft/min': { from: 'm/s', to: 'ft/min' },
  'sheets/h': { from: 'm/s', to: 'sheet/h' },
  degC: { from: 'degC', to: 'degC' },
  degF: { from: 'degC', to: 'degF' },
  um: { from: 'um', to: 'um' },
  'g/m2': { from: 'um', to: 'filmWeight' },
}

/** A value in the set-up's own unit, in the unit named. */
export function convert(value: number, name: UnitName): number {
  const { from, to } = conversions[name]
  return unit(value, from).toNumber(to)
}
