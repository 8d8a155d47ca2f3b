/** A session as it is saved, and taken up again: for links, scenes, files and drafts alike. */
import type { Problem } from '../press/problem.ts'
import { deskOf } from './desk.ts'
import { lectureOf } from './lecture.ts'
import { measureIn } from './measures.ts'
import type { Saved } from './saved.ts'
import { nothingSaved } from './saved.ts'
import type { Session } from './session.ts'
import { trialsOf } from './trials.ts'
import type { Quantity, UnitName } from './unit-names.ts'
import { unitNames } from './unit-names.ts'
import type { ViewState } from './view-state.ts'
import { writeSetUp } from './write-setup.ts'

/** What is looked at; what is as it opens is left out. */
export function viewOf({ look, playback, setUp }: Session['own']): ViewState {
  const units = setUp.inks.length
  const measures = Object.values(look.measures).map(({ unit }) => unit)
  const isOwn = Object.values(unitNames).every((names, index) => names[0] === measures[index])
  const printing = setUp.inks.flatMap(({ name }, unit) => (look.leftOut.includes(name) ? [] : [unit]))
  return {
    ...(look.view === 'bench' ? {} : { view: look.view }),
    ...(printing.length === units ? {} : { patch: printing }),
    ...(playback.unit === units - 1 ? {} : { unit: playback.unit }),
    ...(look.face === 'ink' ? {} : { face: look.face }),
    ...(isOwn ? {} : { measures }),
  }
}

/** Looks at the set-up in force as `view` says; what it leaves out is as it opens, but units of measure stay as they are. */
export async function showView(session: Session, view: ViewState): Promise<void> {
  const { inks } = session.setUp
  const { patch } = view
  const leftOut = patch ? inks.filter((_, unit) => !patch.includes(unit)).map(({ name }) => name) : []
  session.lookWith({ view: view.view ?? 'bench', face: view.face ?? 'ink', leftOut })
  session.play({ kind: 'look at unit', unit: view.unit ?? inks.length - 1 })
  for (const unit of view.measures ?? []) await showIn(session, unit)
}

/** Shows numbers in the units a person is used to, but where a link, a draft or a choice has set others by then. */
export async function openInUnits(session: Session, names: readonly UnitName[]): Promise<void> {
  const opening = session.look.measures
  for (const name of names) {
    const quantity = quantityIn(name)
    const isUnset = () => quantity !== undefined && session.look.measures[quantity] === opening[quantity]
    await showIn(session, name, isUnset)
  }
}

function quantityIn(name: UnitName): Quantity | undefined {
  return (Object.keys(unitNames) as Quantity[]).find((each) => (unitNames[each] as readonly UnitName[]).includes(name))
}

async function showIn(session: Session, name: UnitName, isWanted = () => true): Promise<void> {
  const quantity = quantityIn(name)
  const measure = await measureIn(name)
  if (quantity && isWanted()) session.lookWith({ measures: { ...session.look.measures, [quantity]: measure } })
}

/**
 * The session with what is kept beside it: lessons' progress and a person's settings. `bench` is what is saved of the
 * bench: what is on it, or what is the person's own while a lesson has it.
 */
export function snapshot(
  session: Session,
  beside: Partial<Pick<Saved, 'progress' | 'settings'>> = {},
  bench: Session['own'] = session,
): Saved {
  const { setUp } = bench
  const { readings, file: readingsFile, shelf } = deskOf(session).state
  return {
    ...nothingSaved,
    setUp,
    view: viewOf(bench),
    scenes: lectureOf(session).scenes,
    trials: trialsOf(session).list,
    readings,
    readingsFile,
    shelf,
    ...beside,
  }
}

/**
 * Takes up what was saved of the session, all of it in place of what is there; what was not saved stays. Returns what the
 * bench refused, and why. A lesson that has the bench gives it back first.
 */
export async function restore(session: Session, saved: Saved): Promise<Problem[]> {
  const { setUp, view, scenes, trials, readings, readingsFile, shelf } = saved
  if (scenes.length > 0) lectureOf(session).take(scenes)
  session.giveBack()
  const problems = setUp ? session.change({ kind: 'load', given: writeSetUp(setUp) }) : []
  if (setUp && problems.length === 0) await showView(session, view)
  if (trials.length > 0) trialsOf(session).take(trials)
  const desk = deskOf(session)
  if (readings.length > 0 || readingsFile) desk.set({ readings, file: readingsFile })
  if (shelf.inks.length + shelf.papers.length + shelf.presses.length > 0) desk.set({ shelf })
  return problems
}
