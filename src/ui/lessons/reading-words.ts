/** A reading of a lesson and what is told of it, in the page's language: "the mass trap of yellow on cyan". */
import type { Finding } from '../../lesson/judge.ts'
import type { ReadingName, ReadingRef } from '../../lesson/reading.ts'
import type { LessonKey } from '../../words/en/lesson.ts'
import { say, sayList, sayName } from '../say.ts'
import { shownUnit } from './shown-unit.ts'

const messages: Readonly<Record<ReadingName, LessonKey>> = {
  'mass trap': 'lesson.reading.massTrap',
  film: 'lesson.reading.film',
  lifted: 'lesson.reading.lifted',
  picked: 'lesson.reading.picked',
  contamination: 'lesson.reading.contamination',
  pull: 'lesson.reading.pull',
  'gave way': 'lesson.reading.gaveWay',
  torn: 'lesson.reading.torn',
  brought: 'lesson.reading.brought',
  'taken up': 'lesson.reading.takenUp',
  'given back': 'lesson.reading.givenBack',
  density: 'lesson.reading.density',
  'apparent trap': 'lesson.reading.apparentTrap',
  tack: 'lesson.reading.tack',
  'form roller film': 'lesson.reading.formRollerFilm',
  coverage: 'lesson.reading.coverage',
  temperature: 'lesson.reading.temperature',
  dampening: 'lesson.reading.dampening',
  speed: 'lesson.reading.speed',
  interval: 'lesson.reading.interval',
  'surface strength': 'lesson.reading.surfaceStrength',
}

/** As it stands within a sentence. */
export function sayReading({ what, of = '', on = '', by = '', in: inks, through }: ReadingRef): string {
  const alone = inks?.length === 1 && inks[0] === of ? 'yes' : 'no'
  return say(messages[what], { of, on, by, alone, patch: inks ? sayNames(inks) : 'none', through: through ?? '' })
}

/** The values of a finding, as the page's language says them. */
export function inWords(
  values: Readonly<Record<string, string | number>>,
  { expectation, taken }: Pick<Finding, 'expectation' | 'taken'>,
): Record<string, string | number> {
  return {
    ...values,
    ...(typeof values['unit'] === 'string' ? { unit: shownUnit(values['unit']) } : {}),
    ...('reading' in expectation ? { reading: sayReading(expectation.reading) } : {}),
    ...(taken ? { taken: sayReading(taken) } : {}),
    ...(expectation.is === 'order' ? { now: inARow(String(values['now']).split(', ')) } : {}),
    ...(expectation.is === 'order' ? { aim: inARow(expectation.inks) } : {}),
    ...(expectation.is === 'patch' ? { now: sayNames(String(values['now']).split(', ')) } : {}),
    ...(expectation.is === 'patch' ? { aim: sayNames(expectation.inks) } : {}),
  }
}

/** "yellow, cyan": one after the other */
function inARow(names: readonly string[]): string {
  return names.map(sayName).join(', ')
}

/** "yellow and cyan": together */
function sayNames(names: readonly string[]): string {
  return sayList(names.map(sayName))
}
