import { expect, test } from 'vitest'
import { whyTrapsDiffer } from '../../src/measure/why-traps-differ.ts'

const told = (massTrap: number, apparent: number, lost = 0) =>
  whyTrapsDiffer({ massTrap, apparent, full: 100, lost }).message

test('less than two points need no explanation, whatever was lifted', () => {
  expect(told(75, 76.9)).toBe('why.alike')
  expect(told(75, 73.1, 20)).toBe('why.alike')
  expect(told(75, 77)).not.toBe('why.alike')
  expect(told(75, 73)).not.toBe('why.alike')
})

test('a reading above the transfer is the thin film’s doing, even where ink was lifted', () => {
  expect(told(40, 60)).toBe('why.thinFilmsReadDark')
  expect(told(40, 60, 30)).toBe('why.thinFilmsReadDark')
})

test('a reading below it is the lifting’s from three percent on, and else that of densities that do not add up', () => {
  expect(told(80, 60, 3)).toBe('why.lifted')
  expect(told(80, 60, 2.9)).toBe('why.densitiesDoNotAddUp')
  expect(told(80, 60)).toBe('why.densitiesDoNotAddUp')
})

test('the values come along; where a full transfer cannot be read, the reading itself stands for it', () => {
  const compared = { massTrap: 80, apparent: 60, full: 90, lost: 5 }
  expect(whyTrapsDiffer(compared).values).toEqual(compared)
  expect(whyTrapsDiffer({ ...compared, full: null }).values).toEqual({ ...compared, full: 60 })
})
