/** Parts of the library that it exports for programs that choose what they take, but leaves out of its types. */
import type { FactoryFunction } from 'mathjs'

declare module 'mathjs' {
  export const createAddScalar: FactoryFunction<unknown>
  export const createCreateUnit: FactoryFunction<unknown>
  export const createFractionClass: FactoryFunction<unknown>
  export const createIsNumeric: FactoryFunction<unknown>
  export const createMultiplyScalar: FactoryFunction<unknown>
  export const createNumber: FactoryFunction<unknown>
  export const createSubtractScalar: FactoryFunction<unknown>
  export const createUnitClass: FactoryFunction<unknown>
  export const createUnitFunction: FactoryFunction<unknown>
}
