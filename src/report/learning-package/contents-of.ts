/** What a package says of itself, from what was chosen. */
import type { learningSystem } from '../../words/en/learning-system.ts'
import type { Launch } from '../learning-system/launch.ts'
import type { Contents } from './contents.ts'
import { pageFile } from './contents.ts'

/** Puts a message of the catalogue into words. */
export type SayOfSystem = (key: keyof typeof learningSystem, values: Record<string, string | number>) => string

export function contentsOf(
  launch: Launch,
  titleOf: (lesson: string) => string,
  language: string,
  say: SayOfSystem,
): Contents {
  const { lessons, drills, mastery } = launch.parcel
  const tasks = [
    ...lessons.map((id) => ({ id, title: titleOf(id) })),
    ...Array.from({ length: drills }, (_, at) => ({
      id: `drill-${at + 1}`,
      title: say('system.drill', { number: at + 1 }),
    })),
  ]
  return {
    launch,
    language,
    tasks,
    title: say('system.title', { count: lessons.length, first: tasks[0].title }),
    description: say('system.description', { lessons: lessons.length, drills }),
    readme: say('system.readme', {
      standard: launch.standard,
      page: pageFile,
      list: tasks.map(({ title }) => `- ${title}`).join('\n'),
      mastery:
        mastery === null
          ? say('system.readmeNoMastery', {})
          : say('system.readmeMastery', { percent: `${Number((100 * mastery).toFixed(2))} %` }),
    }),
  }
}
