/** What comes out of the loudspeaker, rendered without one and looked at sample by sample. */
import { readFile } from 'node:fs/promises'
import { expect, test } from '@playwright/test'
import { transformWithOxc } from 'vite'
import type { Voice } from '../../src/ui/sound/voice.ts'

const rate = 44_100

/** s, and what is asked of the voice then */
type Asked = [at: number, what: 'hold' | 'note' | 'knock', pitch?: number | null]

/** The highest sample of each stretch of so many seconds. */
function envelope(samples: readonly number[], seconds: number): number[] {
  const length = Math.round(seconds * rate)
  return Array.from({ length: Math.floor(samples.length / length) }, (_, at) =>
    Math.max(...samples.slice(at * length, (at + 1) * length).map(Math.abs)),
  )
}

/** Hz, counted as the zeros the wave rises through. */
function pitch(samples: readonly number[], from: number, to: number): number {
  const part = samples.slice(from * rate, to * rate)
  return part.filter((each, at) => at > 0 && part[at - 1] < 0 && each >= 0).length / (to - from)
}

/** dB that the curve A of IEC 61672 gives to a tone of this many Hz. */
function weightA(hertz: number): number {
  const square = hertz ** 2
  const low = (square + 20.6 ** 2) * Math.sqrt((square + 107.7 ** 2) * (square + 737.9 ** 2))
  return 20 * Math.log10((12_194 ** 2 * square ** 2) / (low * (square + 12_194 ** 2))) + 2
}

/** dB(A) of the odd harmonics of this many Hz. */
function loudness(samples: readonly number[], hertz: number): number {
  const part = samples.slice(0.3 * rate, 0.6 * rate)
  const powers = [1, 3, 5, 7, 9].map((harmonic) => {
    const turn = (2 * Math.PI * hertz * harmonic) / rate
    const real = part.reduce((sum, each, at) => sum + each * Math.cos(turn * at), 0)
    const imaginary = part.reduce((sum, each, at) => sum + each * Math.sin(turn * at), 0)
    return ((2 * Math.hypot(real, imaginary)) / part.length) ** 2 * 10 ** (weightA(hertz * harmonic) / 10)
  })
  return 10 * Math.log10(powers.reduce((sum, each) => sum + each))
}

test('the sound of the nip rises with the pull, as loud at every pitch, without clicks, and does not pile up', async ({
  page,
}) => {
  const source = await readFile(new URL('../../src/ui/sound/voice.ts', import.meta.url), 'utf8')
  const { code } = await transformWithOxc(source, 'voice.ts')
  const script = code.replace(/^export \{[^}]*\};?|^export /gm, '')

  const render = (seconds: number, asked: Asked[]): Promise<number[]> =>
    page.evaluate(
      async ([text, duration, plan, sampleRate]) => {
        const context = new OfflineAudioContext(1, duration * sampleRate, sampleRate)
        const goOn = context.resume.bind(context)
        // The voice wakes its context as a page may; this one sleeps where it is told.
        Object.defineProperty(context, 'resume', { value: () => Promise.resolve() })
        Object.defineProperty(window, 'AudioContext', {
          configurable: true,
          value: function () {
            return context
          },
        })
        const voice = (0, eval)(`(() => { ${text}; return loudspeaker() })()`) as Voice
        for (const [at, what, hertz] of plan)
          void context.suspend(at).then(() => {
            if (what === 'knock') voice.knock()
            else if (what === 'note') voice.note(hertz ?? 0)
            else voice.hold(hertz ?? null)
            return goOn()
          })
        return Array.from((await context.startRendering()).getChannelData(0))
      },
      [script, seconds, asked, rate] as const,
    )

  // A nip: the tone rises and goes; between two samples it never moves more than the wave itself does.
  const rising = Array.from({ length: 30 }, (_, at): Asked => [0.1 + at / 60, 'hold', 165 * 2 ** (at / 15)])
  const nip = await render(1, [...rising, [0.6, 'hold', null]])
  const heard = [0.15, 0.25, 0.35, 0.45].map((from) => pitch(nip, from, from + 0.1))
  for (let at = 1; at < heard.length; at++) expect(heard[at]).toBeGreaterThan(1.2 * heard[at - 1])
  const steps = nip.slice(1).map((each, at) => Math.abs(each - nip[at]))
  expect(Math.max(...steps)).toBeLessThan(0.01)
  expect(Math.max(...nip.slice(0.8 * rate).map(Math.abs))).toBeLessThan(0.0001)

  const levels: number[] = []
  for (const hertz of [165, 330, 660, 1320]) levels.push(loudness(await render(0.6, [[0.01, 'hold', hertz]]), hertz))
  expect(Math.max(...levels) - Math.min(...levels)).toBeLessThan(3)

  // Moved by hand, 20 tones a second: none ends the next one, nor the tone of a nip that is then run.
  const scrubbed = await render(2, [
    ...Array.from({ length: 20 }, (_, at): Asked => [0.1 + at / 20, 'note', 440]),
    [1.2, 'hold', 440],
  ])
  expect(Math.min(...envelope(scrubbed.slice(0.2 * rate), 0.05))).toBeGreaterThan(0.05)

  // Thirty nips a second that all pick: far below what a loudspeaker can give.
  const hurried = Array.from({ length: 30 }, (_, at): Asked[] => [
    [0.1 + at / 30, 'note', 165],
    [0.11 + at / 30, 'knock'],
  ])
  expect(Math.max(...envelope(await render(1.5, hurried.flat()), 0.1))).toBeLessThan(0.6)
})
