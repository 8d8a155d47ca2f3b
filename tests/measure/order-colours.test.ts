import { describe, expect, it } from 'vitest'
import { colourDifference } from '../../src/colour/colour-difference.ts'
import { aimedColours, aimedPatches, colourJudge } from '../../src/measure/order-colours.ts'
import { readPatch, stripOf } from '../../src/measure/strip.ts'
import { isRefused } from '../../src/measure/said.ts'
import { aimsNamed } from '../../src/colour/published-aim.ts'
import { papers } from '../../src/physics/paper.ts'
import { patchOf } from '../../src/press/patches.ts'
import { runPress } from '../../src/press/run.ts'
import { checkSetUp } from '../press/legal-setups.ts'

const setUp = checkSetUp([16, 14, 12, 10])
const fogra39 = aimsNamed('FOGRA39L')

describe('the colours that orders are judged by', () => {
  it('are all solids and overprints of the process inks, with their published Lab', () => {
    const patches = fogra39 ? aimedPatches(setUp, fogra39) : []
    expect(patches).toHaveLength(15)
    // FOGRA39L, solid black and red (magenta + yellow), as published.
    expect(patches.find(({ inks }) => inks.join() === '0')?.Lab).toEqual(fogra39?.Lab.K)
    expect(patches.find(({ inks }) => inks.join() === '2,3')?.Lab).toEqual(fogra39?.Lab.MY)
  })

  it('are all different, and each of one ink or more', () => {
    const patches = fogra39 ? aimedPatches(setUp, fogra39) : []
    expect(new Set(patches.map(({ inks }) => inks.join())).size).toBe(15)
    for (const { inks } of patches) expect(inks.length).toBeGreaterThan(0)
  })

  // The characterisations are published for offset on coated and on uncoated paper, and for newspapers.
  it.each([
    ['coated', 'FOGRA39L'],
    ['light-weight coated', 'FOGRA39L'],
    ['uncoated', 'FOGRA29L'],
    ['weak uncoated', 'FOGRA29L'],
    ['newsprint', 'IFRA26S'],
  ] as const)('are on %s paper held to %s where nothing else is said', (name, aim) => {
    const own = { ...setUp, paper: papers[name] }
    const aims = aimsNamed(aim)
    expect(aimedColours(own)?.patches).toEqual(aims && aimedPatches(own, aims))
  })

  it('read as the strip reads them', () => {
    const run = runPress(setUp)
    const strip = stripOf(run)
    const colours = aimedColours(setUp, 'FOGRA39L')
    const order = Uint8Array.of(0, 1, 2, 3)
    const differences = colours?.differences(run.sheets[4], order) ?? []
    const byStrip = colours?.patches.map(({ inks, Lab }) => {
      const { colour } = readPatch(strip, patchOf(inks))
      return isRefused(colour) ? NaN : colourDifference(colour.Lab, Lab)
    })
    differences.forEach((difference, index) => expect(difference).toBeCloseTo(byStrip?.[index] ?? NaN, 9))
    expect(colourJudge(setUp)?.(run.sheets[4], order)).toBeCloseTo(differences.reduce((a, b) => a + b, 0) / 15, 12)
  })

  it('are none where no loaded ink has a published colour, or the aim is unknown', () => {
    const spots = { ...setUp, inks: setUp.inks.map((ink) => ({ ...ink, name: `${ink.name} spot` })) }
    expect(colourJudge(spots)).toBeUndefined()
    expect(colourJudge(setUp, 'no such aim')).toBeUndefined()
    const own = { ...setUp, inks: setUp.inks.map((ink) => ({ ...ink, colour: '#ff0000' })) }
    expect(colourJudge(own)).toBeUndefined()
  })
})
