import { expect, test } from 'vitest'
import { Session } from '../../../src/session/session.ts'
import { hearSession } from '../../../src/ui/sound/hear-session.ts'
import { pitchOf, pullThatGave, toneAt } from '../../../src/ui/sound/nip-sound.ts'

/** A loudspeaker that writes down what it is asked for. */
function listened(session: Session) {
  const heard: (string | number | null)[] = []
  let made = 0
  const end = hearSession(session, () => {
    made++
    return {
      hold: (pitch) => heard.push(pitch),
      note: (pitch) => heard.push(`note ${Math.round(pitch)}`),
      knock: () => heard.push('knock'),
      end: () => heard.push('end'),
    }
  })
  return { heard, end, made: () => made }
}

function runNip(session: Session): void {
  for (let frame = 0; frame < 200 && session.playback.playing; frame++) session.play({ kind: 'tick', seconds: 0.02 })
}

test('while a nip opens the tone rises to the pull that gave way, and then it is silent', () => {
  const session = new Session()
  session.play({ kind: 'scrub', phase: 0 })
  const { heard } = listened(session)
  session.play({ kind: 'step nip', atOnce: false })
  runNip(session)
  const tones = heard.filter((each) => typeof each === 'number')
  expect(tones.length).toBeGreaterThan(20)
  for (let at = 1; at < tones.length; at++) expect(tones[at]).toBeGreaterThanOrEqual(tones[at - 1])
  const account = session.results.accounts(session.patch)[session.playback.unit]
  expect(tones.at(-1)).toBeCloseTo(pitchOf(pullThatGave(account)), 6)
  expect(heard.at(-1)).toBeNull()
})

test('a stiffer ink sounds higher', () => {
  const soft = new Session()
  const stiff = new Session()
  stiff.change({
    kind: 'load',
    given: {
      inks: [
        { name: 'black', tack: 20 },
        { name: 'cyan', tack: 18 },
      ],
    },
  })
  soft.change({
    kind: 'load',
    given: {
      inks: [
        { name: 'black', tack: 10 },
        { name: 'cyan', tack: 8 },
      ],
    },
  })
  const tone = (session: Session) => toneAt(session.results.accounts(session.patch)[1], 0.55) ?? 0
  expect(tone(stiff)).toBeGreaterThan(1.3 * tone(soft))
})

test('a pick is a knock, once a nip, and a sheet that stays whole has none', () => {
  const session = new Session()
  session.change({ kind: 'take scenario', scenario: 'weak' })
  session.play({ kind: 'look at unit', unit: 0 })
  session.play({ kind: 'scrub', phase: 0 })
  const torn = session.results.accounts(session.patch).map((account) => account.torn)
  const { heard } = listened(session)
  for (const share of torn) {
    heard.length = 0
    session.play({ kind: 'step nip', atOnce: false })
    runNip(session)
    expect(heard.filter((each) => each === 'knock')).toHaveLength(share >= 0.001 ? 1 : 0)
  }
  expect(torn.some((share) => share >= 0.001)).toBe(true)
})

test('with less motion a step is one short tone, and a nip moved by hand sounds where it is', () => {
  const session = new Session()
  session.play({ kind: 'look at unit', unit: 1 })
  session.play({ kind: 'scrub', phase: 0 })
  const { heard } = listened(session)
  session.play({ kind: 'step nip', atOnce: true })
  const account = session.results.accounts(session.patch)[1]
  expect(heard).toEqual([`note ${Math.round(pitchOf(pullThatGave(account)))}`])
  heard.length = 0
  session.play({ kind: 'scrub', phase: 0.1 })
  expect(heard).toEqual([])
  session.play({ kind: 'scrub', phase: 0.44 })
  expect(heard).toEqual([`note ${Math.round(toneAt(account, 0.44) ?? 0)}`])
})

test('nothing is made before something is to be heard, and all of it ends', () => {
  const session = new Session()
  session.play({ kind: 'scrub', phase: 0 })
  const { heard, end, made } = listened(session)
  session.lookWith({ face: 'marks' })
  session.change({ kind: 'move ink', from: 0, to: 1 })
  expect(made()).toBe(0)
  session.play({ kind: 'scrub', phase: 0.6 })
  expect(made()).toBe(1)
  end()
  session.play({ kind: 'scrub', phase: 0.5 })
  expect(heard.at(-1)).toBe('end')
})
