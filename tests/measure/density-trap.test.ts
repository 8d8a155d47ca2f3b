import { expect, test } from 'vitest'
import { densityTrap } from '../../src/measure/density-trap.ts'

test('the three equations give the percent worked out by hand', () => {
  // D1 0.4, D2 1.4, D3 1.42: Preucil (1.42 - 0.4) / 1.4; Ritz (1 - 10^-1.02) / (1 - 10^-1.4); Brunner
  // (1 - 10^-1.42) / (1 - 10^-1.8). With 10^-1.02 = 0.095499, 10^-1.4 = 0.039811, 10^-1.42 = 0.038019, 10^-1.8 = 0.015849.
  const trap = densityTrap({ D1: 0.4, D2: 1.4, D3: 1.42 }, 'magenta', 'green')
  if ('refused' in trap) throw new Error(trap.refused.message)
  expect(trap.percent.preucil).toBeCloseTo(72.857, 3)
  expect(trap.percent.ritz).toBeCloseTo(94.2, 2)
  expect(trap.percent.brunner).toBeCloseTo(97.747, 3)
})

test('a second ink that hardly darkens this filter tells nothing, by its name, the filter and its density', () => {
  expect(densityTrap({ D1: 0, D2: 0.099, D3: 0.2 }, 'yellow', 'red')).toEqual({
    refused: { message: 'trap.readsNextToNothing', values: { ink: 'yellow', filter: 'red', D2: 0.099 } },
  })
  expect(densityTrap({ D1: 0, D2: 0.1, D3: 0.1 }, 'yellow', 'red')).toHaveProperty('percent')
})

test('nor does one over an ink that leaves no light to take', () => {
  expect(densityTrap({ D1: 1.2, D2: 1.2, D3: 1.5 }, 'cyan', 'red')).toEqual({
    refused: { message: 'trap.noLightLeft', values: { ink: 'cyan', filter: 'red', D1: 1.2, D2: 1.2 } },
  })
  expect(densityTrap({ D1: 1.19, D2: 1.2, D3: 1.5 }, 'cyan', 'red')).toHaveProperty('percent')
})

test('densities that are none are refused before anything is read from them', () => {
  expect(densityTrap({ D1: NaN, D2: 1.2, D3: 1.5 }, 'cyan', 'red')).toMatchObject({
    refused: { message: 'trap.notANumber' },
  })
  expect(densityTrap({ D1: -0.1, D2: 0.05, D3: 1.5 }, 'cyan', 'red')).toMatchObject({
    refused: { message: 'trap.negative' },
  })
})
