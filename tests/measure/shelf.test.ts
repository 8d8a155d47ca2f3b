import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { checkShelf, readShelf } from '../../src/measure/check-shelf.ts'
import type { Fit } from '../../src/measure/fit.ts'
import { fitPress } from '../../src/measure/fit.ts'
import type { FitParameter } from '../../src/measure/fit-parameter.ts'
import { fittedPress } from '../../src/measure/fitted-press.ts'
import { putOnShelf, setUpWithPress, takeOffShelf } from '../../src/measure/shelf-change.ts'
import type { Shelf } from '../../src/measure/shelf.ts'
import { emptyShelf, writeShelf } from '../../src/measure/shelf.ts'
import { writtenPaper, writtenPress } from '../../src/measure/written-setup.ts'
import { checkSetUp as checkInput } from '../../src/press/check-setup.ts'
import { anySetUp, checkSetUp } from '../press/legal-setups.ts'
import { sheetOfMadeUpPress } from './made-up-press.ts'

const full: Shelf = {
  ...emptyShelf,
  inks: [{ name: 'moss', tack: 13, film: 4.2, coverage: 0.3, colour: '#2f7d4f' }],
  papers: [{ base: 'uncoated', name: 'school paper', surfaceStrength: 33, absorbency: 1.4 }],
  presses: [{ name: 'old two-unit press', press: { kind: 'sheet-fed', speed: 1.5, dampening: 1.2 } }],
}

function problems(change: object, of: Shelf = full) {
  const checked = checkShelf({ ...of, ...change })
  return 'problems' in checked ? checked.problems : []
}

describe('a shelf', () => {
  it('is read back from its file as it was written', () => {
    expect(readShelf(writeShelf(full))).toEqual({ shelf: full })
    expect(readShelf(writeShelf(emptyShelf))).toEqual({ shelf: emptyShelf })
  })

  it('holds only what a set-up takes, name for name and problem for problem', () => {
    expect(problems({ inks: [{ name: 'moss', tack: 99 }] })).toMatchObject([
      { path: 'inks[0].tack', message: expect.stringContaining('2 to 40') as string },
    ])
    expect(problems({ papers: [{ base: 'uncoated', name: 'a', glossy: true }] })).toMatchObject([
      { path: 'papers[0].glossy' },
    ])
    expect(problems({ presses: [{ name: 'a', press: { kind: 'gravure' } }] })).toMatchObject([
      { path: 'presses[0].press.kind' },
    ])
    expect(
      problems({
        presses: [
          {
            name: 'a',
            press: {},
            inks: [
              { name: 'x', tack: 10 },
              { name: 'y', tack: -1 },
            ],
          },
        ],
      }),
    ).toMatchObject([{ path: 'presses[0].inks[1].tack' }])
    expect(problems({ presses: [{ name: 'a', press: {}, paper: { name: 'b', evenness: 'high' } }] })).toMatchObject([
      { path: 'presses[0].paper.evenness' },
    ])
  })

  it.each([
    [{ kind: 'a session' }, 'kind'],
    [{ version: 2 }, 'version'],
    [{ inks: {} }, 'inks'],
    [{ inks: [{ tack: 10 }] }, 'inks[0].name'],
    [{ inks: [{ name: '  ', tack: 10 }] }, 'inks[0].name'],
    [{ inks: [{ name: 'x'.repeat(41), tack: 10 }] }, 'inks[0].name'],
    [{ inks: [{ name: 'a on b', tack: 10 }] }, 'inks[0].name'],
    [{ papers: [{ name: 'coated', absorbency: 2 }] }, 'papers[0].name'],
    [{ inks: [full.inks[0], { ...full.inks[0], name: ' Moss' }] }, 'inks[1].name'],
    [{ presses: [{ name: 'a' }] }, 'presses[0].press'],
    [{ presses: [{ name: ' ', press: {} }] }, 'presses[0].name'],
    [{ presses: [{ name: 'x'.repeat(41), press: {} }] }, 'presses[0].name'],
    [{ presses: [{ name: 'a on b', press: {} }] }, 'presses[0].name'],
    [{ presses: [{ name: 'a', press: {}, fit: { status: 'A' } }] }, 'presses[0].fit.status'],
    [{ more: 1 }, 'more'],
  ])('%j is refused at %s', (change, path) => {
    expect(problems(change).map((problem) => problem.path)).toContain(path)
    for (const { message } of problems(change)) expect(message).toMatch(/[a-z]/)
  })

  it('takes a press by any name of 40 letters, with whatever can be fitted, from a densitometer of either status', () => {
    for (const status of ['E', 'T'] as const) {
      const kinds = ['film', 'tack', 'dampening', 'settingGain', 'evenness'] as const
      const values = kinds.map((kind) => ({ kind, ink: null, value: 1, standardError: 0.1 }))
      const fit = { status, readings: 45, deviation: 0.01, values }
      const shelf: Shelf = { ...full, presses: [{ name: 'x'.repeat(40), press: {}, fit }] }
      expect(readShelf(writeShelf(shelf))).toEqual({ shelf })
    }
  })

  it('says of a field that is not known which are, and of one that is missing that it is', () => {
    expect(problems({ more: 1 })[0].message).toContain('kind, version, inks, papers, presses')
    expect(problems({ presses: [{ name: 'a' }] })[0].message).toContain('missing')
    expect(problems({ presses: [{ name: 'a', press: 3 }] })[0].message).toContain('kind, speed')
  })

  it('is read up to 2,000,000 characters, and a longer file not even tried', () => {
    expect(readShelf(writeShelf(full).padEnd(2_000_000))).toEqual({ shelf: full })
    expect(readShelf(writeShelf(full).padEnd(2_000_001))).toMatchObject({
      problems: [{ path: '', message: expect.stringContaining('2 ') as string }],
    })
    expect(readShelf('{')).toMatchObject({ problems: [{ path: '' }] })
  })

  it('too many entries, another file, none at all: in words, never thrown', () => {
    expect(problems({ inks: Array.from({ length: 501 }, (_, i) => ({ name: `ink ${i}`, tack: 10 })) })).toMatchObject([
      { path: 'inks' },
    ])
    expect(problems({ presses: Array(50_000).fill(0) })).toMatchObject([{ path: 'presses' }])
    for (const text of ['', 'patch;red', '[]', 'null', '3', '{"__proto__":{"a":1}}', '"x"', ' '.repeat(3_000_000)]) {
      expect(readShelf(text)).toHaveProperty('problems')
    }
    fc.assert(
      fc.property(fc.anything(), (anything) => {
        expect(checkShelf(anything)).toHaveProperty('problems')
      }),
    )
  })
})

describe('papers and presses in use', () => {
  it('go on the shelf and come back as the same set-up', () => {
    fc.assert(
      fc.property(anySetUp(2, 3), ({ paper, press, inks }) => {
        const input = { inks, paper: writtenPaper(paper, 'own'), press: writtenPress(press) }
        const checked = checkInput(JSON.parse(JSON.stringify(input)))
        if ('problems' in checked) throw new Error(JSON.stringify(checked.problems))
        expect(checked.setUp.paper).toEqual({ ...paper, name: 'own' })
        expect(checked.setUp.press).toEqual(press)
        expect(checked.setUp.inks).toEqual(inks)
      }),
    )
  })

  it('leave an interval that follows from the speed to follow', () => {
    expect(writtenPress(checkSetUp([16, 14]).press)).not.toHaveProperty('interval')
  })
})

describe('what is done with a shelf', () => {
  it('an entry goes on, another of its name gives way, and comes off', () => {
    const moss = { name: 'Moss ', tack: 9, film: 4, coverage: 0.5 }
    const { shelf, replaced } = putOnShelf(full, { inks: [moss, { ...moss, name: 'reed' }] })
    expect(replaced).toEqual([{ list: 'inks', name: 'moss' }])
    expect(shelf.inks.map(({ name }) => name)).toEqual(['Moss ', 'reed'])
    expect(shelf.papers).toEqual(full.papers)
    expect(checkShelf(shelf)).toEqual({ shelf })
    expect(takeOffShelf(shelf, 'inks', 'MOSS').inks.map(({ name }) => name)).toEqual(['reed'])
    expect(takeOffShelf(shelf, 'papers', 'moss')).toEqual(shelf)
  })

  it('a whole shelf put on an empty one is that shelf; put on itself, too', () => {
    expect(putOnShelf(emptyShelf, full)).toEqual({ shelf: full, replaced: [] })
    expect(putOnShelf(full, full).shelf).toEqual(full)
  })

  it('a press from it takes the place of the set-up’s own; paper, inks, reading stay where it brings none', () => {
    const setUp = { ...checkSetUp([16, 14, 12, 10], { reading: 'first' }), seed: 9 }
    const changed = setUpWithPress(setUp, full.presses[0])
    expect(changed).toMatchObject({ setUp: { press: { speed: 1.5, dampening: 1.2, kind: 'sheet-fed' } } })
    if ('setUp' in changed) expect({ ...changed.setUp, press: setUp.press }).toEqual(setUp)
  })
})

it('a fitted press goes on the shelf, comes back, and is usable as a set-up', () => {
  const setUp = checkSetUp([16, 14, 12, 10])
  const parameters: FitParameter[] = [
    ...setUp.inks.map((_, unit) => ({ kind: 'film', unit }) as const),
    { kind: 'dampening', unit: null },
  ]
  const sheet = sheetOfMadeUpPress({
    setUp,
    parameters,
    truth: [3.6, 4.4, 4.1, 3.8, 0.6],
    status: 'T',
    noise: 0.01,
    seed: 1,
  })
  const steps = fitPress({ setUp, sheet, status: 'T', parameters })
  let next = steps.next()
  while (!next.done) next = steps.next()
  const fit = next.value as Fit
  const shelf: Shelf = { ...emptyShelf, presses: [fittedPress(fit, 'press in the hall')] }
  const read = readShelf(writeShelf(shelf))
  expect(read).toEqual({ shelf })
  const [{ fit: note }] = shelf.presses
  const checked = setUpWithPress(checkSetUp([12, 11]), shelf.presses[0])
  if ('problems' in checked) throw new Error(JSON.stringify(checked.problems))
  expect(checked.setUp).toEqual({ ...fit.setUp, paper: { ...fit.setUp.paper, name: 'press in the hall' } })
  expect(note).toMatchObject({
    status: 'T',
    readings: 45,
    values: [{ kind: 'film', ink: 'black' }, {}, {}, {}, { kind: 'dampening', ink: null }],
  })
})
