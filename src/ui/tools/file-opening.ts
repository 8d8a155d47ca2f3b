/** Looks into a file without touching the bench, and opens what could be read so that it can be taken back. */
import type { Problem } from '../../press/problem.ts'
import { problem } from '../../press/problem.ts'
import { deskOf } from '../../session/desk.ts'
import { largestFile, readFile } from '../../session/file.ts'
import { takeUpLearned } from '../../session/learned.ts'
import { learningOf } from '../../session/learning.ts'
import { lectureOf } from '../../session/lecture.ts'
import type { Saved } from '../../session/saved.ts'
import type { Session } from '../../session/session.ts'
import type { Settings } from '../../session/settings.ts'
import { offeredSettings } from '../../session/settings.ts'
import { restore, showView, viewOf } from '../../session/snapshot.ts'
import { trialsOf } from '../../session/trials.ts'
import { browserStorage } from '../browser-storage.ts'
import { comfort } from '../comfort.ts'

export type Found =
  | { kind: 'refused'; name: string; problems: readonly Problem[] }
  | { kind: 'read'; name: string; problems: readonly Problem[]; saved: Saved }

/** The part of a file that a program of this kind may be given: four bytes for each character it reads. */
const largestBytes = 4 * largestFile

export async function lookIntoFile(file: File): Promise<Found> {
  const { name, size } = file
  if (size > largestBytes) {
    const sizes = { size: Math.ceil(size / 1024), most: Math.floor(largestBytes / 1024) }
    return { kind: 'refused', name, problems: [problem('', 'problem.file.tooLarge', sizes)] }
  }
  const text = await textOf(file)
  if (typeof text !== 'string') return { kind: 'refused', name, problems: [text] }
  const opened = readFile(text)
  if ('refused' in opened) return { kind: 'refused', name, problems: [opened.refused] }
  const { saved, problems } = opened
  // A file of which nothing at all could be read has nothing to open.
  return problems.length > 0 && isEmpty(saved)
    ? { kind: 'refused', name, problems }
    : { kind: 'read', name, problems, saved }
}

/** A folder, or a file that went away, cannot be read. */
async function textOf(file: File): Promise<string | Problem> {
  try {
    return await file.text()
  } catch (error) {
    if (!(error instanceof DOMException)) throw error
    return problem('', 'problem.file.unreadable', { reason: error.message })
  }
}

function isEmpty({ setUp, trials, readings, readingsFile, shelf, scenes, progress }: Saved): boolean {
  const lists = [trials, readings, shelf.inks, shelf.papers, shelf.presses, scenes, progress]
  return !setUp && !readingsFile && lists.every((list) => list.length === 0)
}

export interface Opening {
  /** what the bench refused */
  readonly problems: readonly Problem[]
  /** what the person may take over of how the page was for whoever saved the file */
  readonly offered: Settings
  readonly takeBack: () => Promise<void>
}

export async function openSaved(session: Session, saved: Saved): Promise<Opening> {
  const before = {
    setUp: session.setUp,
    view: viewOf(session),
    measures: session.look.measures,
    scenes: lectureOf(session).scenes,
    trials: trialsOf(session).list,
    desk: deskOf(session).state,
    settings: comfort().settings,
  }
  const problems = await restore(session, saved)
  const forgetLearned = takeUpLearned(learningOf(session, browserStorage), saved.progress)
  const takeBack = async () => {
    if (session.setUp !== before.setUp) session.undo()
    await showView(session, before.view)
    session.lookWith({ measures: before.measures })
    if (lectureOf(session).scenes !== before.scenes) lectureOf(session).take(before.scenes)
    trialsOf(session).take(before.trials)
    deskOf(session).set(before.desk)
    forgetLearned()
    if (comfort().settings !== before.settings) comfort().set(before.settings)
  }
  return { problems, offered: offeredSettings(before.settings, saved.settings), takeBack }
}
