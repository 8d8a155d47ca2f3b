/** What has to be told of learners who handed in more than once, and of browsers used under several names. */
import type { LearnerDigest } from '../../class/roll.ts'
import { language } from '../language.ts'
import { say, sayList } from '../say.ts'

interface Told {
  readonly head: string
  readonly lines: readonly string[]
}

export function againWords(learners: readonly LearnerDigest[]): Told[] {
  const again = learners.filter(({ files }) => files > 1)
  const names = new Map<string, string[]>()
  for (const learner of learners) names.set(learner.id, [...(names.get(learner.id) ?? []), nameOf(learner)])
  const shared = [...names.values()].filter((each) => each.length > 1)
  const dates = new Intl.DateTimeFormat(language().tag, { dateStyle: 'medium', timeStyle: 'short' })
  const told = [
    {
      head: say('board.again', { count: again.length }),
      lines: again.map((learner) =>
        say('board.againFiles', {
          name: nameOf(learner),
          count: learner.files,
          made: dates.format(new Date(learner.made)),
        }),
      ),
    },
    { head: say('board.sameBrowser', { count: shared.length }), lines: shared.map(sayList) },
  ]
  return told.filter(({ lines }) => lines.length > 0)
}

function nameOf({ name, id }: LearnerDigest): string {
  return name === '' ? say('board.nameless', { id: id.slice(0, 8) }) : name
}
