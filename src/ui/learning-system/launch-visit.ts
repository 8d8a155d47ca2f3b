/**
 * Opens the page for a learning system that has launched it. Where none is found, as when the page of a package is opened
 * by itself, nothing is kept or shown and the page is the plain page.
 */
import { Cmi5 } from '../../report/learning-system/cmi5.ts'
import { readCmi5Launch } from '../../report/learning-system/cmi5-launch.ts'
import { findApi } from '../../report/learning-system/find-api.ts'
import type { Launch } from '../../report/learning-system/launch.ts'
import { readLaunch } from '../../report/learning-system/launch.ts'
import { Scorm } from '../../report/learning-system/scorm.ts'
import { scorm12 } from '../../report/learning-system/scorm-12.ts'
import { scorm2004 } from '../../report/learning-system/scorm-2004.ts'
import { shortOf } from '../../report/learning-system/shelf-storage.ts'
import type { LearningSystem } from '../../report/learning-system/system.ts'
import { Visit } from '../../report/learning-system/visit.ts'
import { Learning } from '../../session/learning.ts'
import { keepForVisit, ownStorage } from '../browser-storage.ts'
import { comfort } from '../comfort.ts'
import { chooseLanguage, isOffered, language } from '../language.ts'
import { course, courseLesson, offerOnly } from '../lessons/course-files.ts'
import { say } from '../say.ts'
import { connectOnlyTo } from './narrow-policy.ts'
import { newUuid } from './new-uuid.ts'
import { VisitBar } from './visit-bar.ts'
import { VisitStorage } from './visit-storage.ts'
import { putWork, workIn } from './work-here.ts'

/** ms the page waits for a system before it opens without it; what was kept there then comes when it answers. */
const patience = 5000
/** ms from a change to its being looked at: a slider that is drawn makes many. */
const rest = 300

/** The line that says what becomes of the results; null where no system has launched the page. */
export async function launchVisit(search: string): Promise<VisitBar | null> {
  const launch = readLaunch(search, course.lessons)
  const system = launch && systemFor(launch.standard, search)
  if (!system) return null
  const { parcel } = launch
  const storage = new VisitStorage(ownStorage())
  const visit = new Visit(
    system,
    {
      parcel,
      lesson: (id) => (course.lessons.includes(id) ? courseLesson(id) : null),
      titleOfDrill: (number) => say('system.drill', { number }),
      asksOfDrill: say('system.asksOfDrill'),
    },
    { now: () => Date.now(), later, newId: newUuid, storage: ownStorage() },
  )
  keepForVisit(storage)
  offerOnly(parcel.lessons)
  const waited = new Promise((resolve) => setTimeout(resolve, patience))
  await Promise.race([visit.open(), waited])
  await speakTo(visit)
  putWork(storage, visit.work)
  openView(parcel)
  follow(visit, storage, parcel.lessons)
  const bar = new VisitBar()
  bar.visit = visit
  bar.look = () => visit.note(workIn(storage, parcel.lessons))
  return bar
}

function systemFor(standard: Launch['standard'], search: string): LearningSystem | null {
  if (standard !== 'cmi5') {
    const dialect = standard === 'scorm-1.2' ? scorm12 : scorm2004
    const api = findApi(window, dialect.apiName, dialect.hops)
    return api && new Scorm(api, dialect)
  }
  const launch = readCmi5Launch(search)
  if (!launch) return null
  connectOnlyTo([launch.endpoint, launch.fetch])
  const fetchHere = (address: string, request: RequestInit) => window.fetch(address, request)
  return new Cmi5(launch, { fetch: fetchHere, later, now: () => Date.now(), newId: newUuid }, language().tag)
}

/** The learner's own choice in this browser goes before what the system knows of it. */
async function speakTo({ opened }: Visit): Promise<void> {
  if (comfort().settings.language !== undefined) return
  const tag = opened?.languages.flatMap((each) => [each, each.split('-')[0]]).find(isOffered)
  if (tag !== undefined) await chooseLanguage(tag)
}

/** A package opens where its work is, unless its address says otherwise. */
function openView({ lessons }: Launch['parcel']): void {
  if (location.hash.length > 1) return
  history.replaceState(history.state, '', lessons.length > 0 ? '#view=lessons' : '#view=drills')
}

function follow(visit: Visit, storage: VisitStorage, lessons: readonly string[]): void {
  const look = () => visit.note(workIn(storage, lessons))
  let wait: ReturnType<typeof setTimeout> | undefined
  storage.changed = () => {
    clearTimeout(wait)
    wait = setTimeout(look, rest)
  }
  let isOpened = visit.opened !== null
  nameLearner(visit, storage)
  visit.subscribe(() => {
    if (isOpened || !visit.opened) return
    isOpened = true
    // It answers late: what it had is put beside what was done meanwhile.
    nameLearner(visit, storage)
    putWork(storage, visit.work)
  })
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'hidden') return
    look()
    void visit.flush()
  })
  addEventListener('beforeunload', (event) => {
    look()
    if (visit.wouldLose) event.preventDefault()
  })
  addEventListener('online', () => void visit.flush())
  addEventListener('pagehide', () => {
    look()
    visit.leave()
  })
}

function nameLearner({ opened }: Visit, storage: VisitStorage): void {
  const learning = new Learning(storage)
  if (!opened) return
  if (opened.learner !== '' && learning.name === '') learning.name = opened.learner
  // Files saved at several visits are those of one learner. The system's own id stays with the system.
  if (opened.who !== '') learning.learnerId(() => shortOf(opened.who))
}

function later(call: () => void, ms: number): () => void {
  const timer = setTimeout(call, ms)
  return () => clearTimeout(timer)
}
