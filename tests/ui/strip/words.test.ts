import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { told } from '../../../src/ui/strip/told.ts'
import { strip } from '../../../src/words/en/strip.ts'

const source = readdirSync('src/ui/strip')
  .map((file) => readFileSync(`src/ui/strip/${file}`, 'utf8'))
  .join('\n')

describe.each(Object.keys(strip))('%s', (key) => {
  it('is said by an element of the strip', () => {
    // The last part of some is put in by a value: the name of an equation, a filter, a list.
    const stem = key.replace(/\.[^.]*$/, '.${')
    expect(source.includes(`'${key}'`) || source.includes(`\`${stem}`)).toBe(true)
  })
})

it('tells a list inside a message item by item', () => {
  const parameters = [
    { message: 'fit.parameter.dampening' },
    { message: 'fit.parameter.film', values: { ink: 'cyan' } },
  ] as const
  expect(told({ message: 'fit.atBound', values: { parameters } })).toContain(
    'dampening and film of cyan on the form roller',
  )
})

it('writes numbers inside a message as densities are written', () => {
  expect(told({ message: 'trap.negative', values: { symbol: 'D1', value: -0.1 } })).toContain('D1 is -0.10')
})
