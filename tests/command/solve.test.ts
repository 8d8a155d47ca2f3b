/** `npm run --silent solve`: what it prints and how it ends. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { InputProblem } from '../../src/command/read-input.ts'
import { readSetUp } from '../../src/command/read-setup.ts'
import { solve } from '../../src/command/solve.ts'
import { endOf, endOfProcess } from './end-of.ts'

const folder = mkdtempSync(join(tmpdir(), 'tackstair-solve-'))
afterAll(() => rmSync(folder, { recursive: true }))

function file(name: string, text: string): string {
  writeFileSync(join(folder, name), text)
  return name
}

const inks = [
  { name: 'black', tack: 16 },
  { name: 'cyan', tack: 14 },
]

interface Breaks {
  untouched: number
  paper: number
  films: Record<string, number>
  blanket: number
}

interface Solution {
  massTrap: Record<string, number>
  patches: { inks: string[]; film: Record<string, number>; pickShare: number; breaks: Breaks[] }[]
  lifted: Record<string, number>[]
  contamination: number[]
  pickShare: number
  balance: number
}

describe('solve', () => {
  it('ends in a process of its own as it does here, with a file beside it or with standard input', async () => {
    const [good, wrong] = [JSON.stringify({ inks }), '{"inks": 3}']
    const [fromFile, refused] = await Promise.all([
      endOfProcess('solve', [file('beside.json', good)], '', folder),
      endOfProcess('solve', ['-'], wrong),
    ])
    expect(fromFile).toEqual(await endOf(solve, ['-'], good))
    expect(refused).toEqual(await endOf(solve, ['-'], wrong))
    expect([fromFile.code, refused.code]).toEqual([0, 2])
  })

  it('prints the answer as JSON, from a file and from standard input alike', async () => {
    const text = JSON.stringify({ inks })
    const [fromFile, fromInput] = await Promise.all([
      endOf(solve, [join(folder, file('good.json', text))]),
      endOf(solve, ['-'], text),
    ])
    expect([fromFile.code, fromFile.err]).toEqual([0, ''])
    expect(fromInput).toEqual(fromFile)
    const solution = JSON.parse(fromFile.out) as Solution
    expect(Object.keys(solution.massTrap)).toEqual(['cyan on black'])
    expect(solution.patches.map((patch) => patch.inks)).toEqual([[], ['black'], ['cyan'], ['black', 'cyan']])
    expect(solution.lifted.map(Object.keys)).toEqual([[], ['black']])
    expect(solution.contamination).toHaveLength(2)
    expect(solution.balance).toBeLessThan(1e-9)
    const [, black, cyan, both] = solution.patches
    expect(solution.massTrap['cyan on black']).toBeCloseTo(both.film['cyan'] / cyan.film['cyan'], 12)
    expect(solution.pickShare).toBe(Math.max(...solution.patches.map((patch) => patch.pickShare)))
    expect(black.film['black']).toBeGreaterThan(1)
    for (const { breaks } of solution.patches) {
      for (const { untouched, paper, films, blanket } of breaks) {
        const shares = [untouched, paper, blanket, ...Object.values(films)]
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12)
      }
    }
  })

  it('reads a sheet far on in a run, which by then is the settled one', async () => {
    const far = (reading: unknown) => endOf(solve, ['-'], JSON.stringify({ inks, reading }))
    const [last, settled] = (await Promise.all([far({ sheet: 100_000 }), far('settled')])).map(
      ({ out }) => JSON.parse(out) as Solution,
    )
    expect(last.balance).toBeLessThan(1e-9)
    expect(last.massTrap['cyan on black']).toBeCloseTo(settled.massTrap['cyan on black'], 5)
    expect(last.contamination[1]).toBeCloseTo(settled.contamination[1], 5)
  })

  it('ends with 2 and one line a problem, its place first, and prints nothing else', async () => {
    const black = { name: 'black', tack: 99 }
    const wrong = JSON.stringify({ inks: [black, { ...black, tack: 14 }], paper: 'cardboard', seed: -1 })
    const [refused, huge, none] = await Promise.all([
      endOf(solve, ['-'], wrong),
      endOf(solve, ['-'], ' '.repeat(1_000_001)),
      endOf(solve, []),
    ])
    expect([refused, huge, none].map(({ code, out }) => [code, out])).toEqual(Array(3).fill([2, '']))
    const lines = refused.err.trimEnd().split('\n')
    expect(lines.map((line) => line.split(': ')[0])).toEqual(['inks[0].tack', 'inks[1].name', 'paper', 'seed'])
    expect(lines[0]).toBe('inks[0].tack: 99 is not allowed; allowed are numbers from 2 to 40 tack units')
    expect(huge.err).toBe('-: is larger than 1000 kB; a set-up is far smaller\n')
    expect(none.err).toBe('solve: give the file of one set-up, or - for standard input\n')
  })
})

describe('a set-up that cannot be read', () => {
  const noInput = () => expect.fail('standard input was read')
  const refusal = (name: string): string => {
    try {
      readSetUp(join(folder, name), noInput)
    } catch (error) {
      if (error instanceof InputProblem) return error.message.replaceAll(join(folder, name), name)
      throw error
    }
    return expect.fail('it was taken')
  }

  it.each([
    ['[1, 2]', 'set-up: a list is not allowed; a set-up is an object with inks, paper, press, reading, seed'],
    ['5', 'set-up: 5 is not allowed; a set-up is an object with inks, paper, press, reading, seed'],
    ['null', 'set-up: null is not allowed; a set-up is an object with inks, paper, press, reading, seed'],
    ['{"inks": [}', /^wrong\.json: is not JSON \(.*\); allowed is one JSON object$/],
    ['', /^wrong\.json: is not JSON \(.*\); allowed is one JSON object$/],
    ['\u0000\u0001 binary', /^wrong\.json: is not JSON \(.*\); allowed is one JSON object$/],
  ])('is refused in one line: %j', (text, line) => {
    const said = refusal(file('wrong.json', text))
    expect(said).toMatch(line)
    expect(said).not.toContain('\n')
  })

  it('is none where the file only begins with a byte order mark', () => {
    expect(
      readSetUp(join(folder, file('marked.json', `\uFEFF${JSON.stringify({ inks })}`)), noInput).inks,
    ).toHaveLength(2)
  })

  it('is refused where it is missing, a folder or huge', () => {
    const hint = 'give the name of a file, or - for standard input'
    expect(refusal('nowhere.json')).toMatch(new RegExp(`^nowhere\\.json: cannot be read \\(ENOENT.*\\); ${hint}$`))
    expect(refusal('.')).toMatch(new RegExp(`cannot be read \\(EISDIR.*\\); ${hint}$`))
    expect(refusal(file('huge.json', ' '.repeat(1_000_001)))).toBe(
      'huge.json: is larger than 1000 kB; a set-up is far smaller',
    )
  })
})
