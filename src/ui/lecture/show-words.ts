/**
 * What is read out of a lecture being shown: once for each scene, each number and each blank screen; a number that comes
 * with its nip is read with it.
 */
import type { Show } from '../../session/lecture-show.ts'
import { seenAfter } from '../../session/lecture-show.ts'
import type { Scene } from '../../session/scene.ts'
import type { Session } from '../../session/session.ts'
import { say } from '../say.ts'
import { numberWords } from './number-words.ts'

type BenchesOf = (scene: Scene) => Session[]

/** `before` is null as the lecture begins. */
export function saidOf(before: Show | null, show: Show, scenes: readonly Scene[], benchesOf: BenchesOf): string {
  const { at, press, blank, spot } = show
  if (before && before.blank !== blank) {
    return say(blank ? `lecture.${blank === 'black' ? 'blackened' : 'whitened'}` : 'lecture.shownAgain')
  }
  const scene = scenes[at]
  if (before?.at === at && before.spot !== spot) {
    if (spot === null) return say('lecture.allInLight')
    const [bench] = benchesOf(scene)
    return say('lecture.unitInLight', { unit: spot + 1, name: bench.setUp.inks[spot].name })
  }
  const said = numberSaid(scene, press, benchesOf)
  if (before?.at === at) {
    // The question was read with the scene.
    const isAskedStill = before.press < press && !seenAfter(scene, press).number
    return isAskedStill ? say('lecture.nipPlayed', { waits: String(scene.waits === true) }) : said
  }
  return say('lecture.announce', {
    at: at + 1,
    of: scenes.length,
    name: closed(scene.name),
    number: said === '' ? 'none' : said,
  })
}

function numberSaid(scene: Scene, press: number, benchesOf: BenchesOf): string {
  const { number } = scene
  if (!number) return ''
  if (!seenAfter(scene, press).number) {
    if (scene.waits !== true) return ''
    return say('lecture.asked', { question: scene.question?.trim() || say('lecture.usualQuestion') })
  }
  return benchesOf(scene)
    .map((bench, side) => {
      const read = bench.printing ? null : numberWords(bench, number)
      const words = read ? say('lecture.numberSaid', { ...read }) : say('lecture.said.none')
      const caption = side === 0 ? scene.caption : scene.beside?.caption
      return scene.beside && caption ? say('lecture.sideSaid', { caption, number: words }) : words
    })
    .join('; ')
}

/** A scene's sentence with a full stop, where it has no mark of its own at its end, so that a voice rests there. */
function closed(sentence: string): string {
  const text = sentence.trim()
  return /[.!?…:]$/.test(text) ? text : `${text}.`
}
