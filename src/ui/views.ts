/** The views that a person can go to, in the order of the navigation. Each is loaded when it is first wanted. */
import type { ViewName } from '../session/view-state.ts'
import type { MessageKey } from './say.ts'
import type { SessionElement } from './session-element.ts'

interface View {
  name: ViewName
  label: MessageKey
  element: string
  load: () => Promise<unknown>
}

export const views: readonly View[] = [
  { name: 'bench', label: 'page.bench', element: 'tack-bench', load: () => import('./bench.ts') },
  { name: 'strip', label: 'page.strip', element: 'tack-strip-view', load: () => import('./strip/strip-view.ts') },
  {
    name: 'lessons',
    label: 'page.lessons',
    element: 'tack-lessons-view',
    load: () => import('./lessons/lessons-view.ts'),
  },
  { name: 'orders', label: 'page.orders', element: 'tack-orders-view', load: () => import('./orders/orders-view.ts') },
  { name: 'trials', label: 'page.trials', element: 'tack-trials-view', load: () => import('./trials/trials-view.ts') },
  { name: 'run chart', label: 'page.run', element: 'tack-run-view', load: () => import('./run/run-view.ts') },
  {
    name: 'instruments',
    label: 'page.instruments',
    element: 'tack-instruments-view',
    load: () => import('./instruments/instruments-view.ts'),
  },
  { name: 'drills', label: 'page.drills', element: 'tack-drills-view', load: () => import('./drills/drills-view.ts') },
  {
    name: 'glossary',
    label: 'page.glossary',
    element: 'tack-glossary-view',
    load: () => import('./glossary/glossary-view.ts'),
  },
]

/** The view of that name; the bench where there is none yet. */
export function viewNamed(name: ViewName): View {
  return views.find((view) => view.name === name) ?? views[0]
}

/** An element of the view, once its code is there. Rejects where it cannot be loaded. */
export async function openView({ element, load }: View): Promise<SessionElement> {
  await load()
  return document.createElement(element) as SessionElement
}
