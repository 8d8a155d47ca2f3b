/** The views that a person can go to, in the order of the navigation. Each is loaded when it is first wanted. */
import type { ViewName } from '../session/view-state.ts'
import { nextTurn } from '../view/next-turn.ts'
import type { MessageKey } from './say.ts'
import type { SessionElement } from './session-element.ts'

interface View {
  name: ViewName
  label: MessageKey
  /** not in the navigation: for instructors, who come to it from the lessons */
  aside?: true
  /** the class of its element */
  load: () => Promise<new () => SessionElement>
}

export const views: readonly View[] = [
  { name: 'bench', label: 'page.bench', load: async () => (await import('./bench.ts')).Bench },
  { name: 'strip', label: 'page.strip', load: async () => (await import('./strip/strip-view.ts')).StripView },
  {
    name: 'lessons',
    label: 'page.lessons',
    load: async () => {
      const { LessonsView } = await import('./lessons/lessons-view.ts')
      const { readAhead } = await import('./lessons/course-files.ts')
      await readAhead()
      return LessonsView
    },
  },
  { name: 'orders', label: 'page.orders', load: async () => (await import('./orders/orders-view.ts')).OrdersView },
  { name: 'trials', label: 'page.trials', load: async () => (await import('./trials/trials-view.ts')).TrialsView },
  { name: 'run chart', label: 'page.run', load: async () => (await import('./run/run-view.ts')).RunView },
  {
    name: 'instruments',
    label: 'page.instruments',
    load: async () => (await import('./instruments/instruments-view.ts')).InstrumentsView,
  },
  { name: 'drills', label: 'page.drills', load: async () => (await import('./drills/drills-view.ts')).DrillsView },
  { name: 'lecture', label: 'page.lecture', load: async () => (await import('./lecture/lecture-view.ts')).LectureView },
  {
    name: 'glossary',
    label: 'page.glossary',
    load: async () => (await import('./glossary/glossary-view.ts')).GlossaryView,
  },
  {
    name: 'board',
    label: 'board.title',
    aside: true,
    load: async () => (await import('./board/board-view.ts')).BoardView,
  },
]

/** The view of that name; the bench where there is none yet. */
export function viewNamed(name: ViewName): View {
  return views.find((view) => view.name === name) ?? views[0]
}

/** An element of the view, once its code is there. Rejects where it cannot be loaded. */
export async function openView({ load }: View): Promise<SessionElement> {
  const Element = await load()
  // Its code was run in this one.
  await nextTurn()
  return new Element()
}
