import { expect, it } from 'vitest'
import { lnOfBits } from '../../src/press/fast-ln.ts'

it('takes logarithms of 32-bit floats to 2.5e-4, over all thicknesses a film can have and far beyond', () => {
  const value = new Float32Array(1)
  const bits = new Int32Array(value.buffer)
  let worst = 0
  for (let power = -30; power <= 12; power++) {
    for (let step = 0; step < 4000; step++) {
      value[0] = 2 ** power * (1 + step / 4000)
      worst = Math.max(worst, Math.abs(lnOfBits(bits[0]) - Math.log(value[0])))
    }
  }
  expect(worst).toBeLessThan(2.5e-4)
})
