/**
 * Makes a drill: one of the jobs with a fault hidden in it (two at the hard level), the causes to choose from, and one
 * reading that misleads. A drill is wholly decided by its request, so a class that opens one link gets one drill.
 * Drills that could not be solved are drawn again.
 */
import { seededDraws } from '../physics/random.ts'
import type { SetUp } from '../press/setup.ts'
import type { Casebook } from './casebook.ts'
import { canShow, casebookOf, curveOf, isNoticed, readingsAt } from './casebook.ts'
import type { Cause, Fault, FaultKind } from './cause.ts'
import { causeKey, faultFamilies, sameCause } from './cause.ts'
import type { Evidence } from './evidence.ts'
import { allEvidence, evidenceKey, sheetEvidence } from './evidence.ts'
import { expectedReadings } from './expected.ts'
import { faultSizes, withFaults } from './fault.ts'
import type { JobId } from './jobs.ts'
import { jobIds } from './jobs.ts'
import type { Level, LevelRules } from './level.ts'
import { levelRules, levels } from './level.ts'
import type { MisleadingKind } from './misleading.ts'
import { directEvidence, directKey } from './misleading.ts'
import { distance, explanations, ruledOutAt } from './separation.ts'

export interface DrillRequest {
  /** a whole number from 0 */
  readonly seed: number
  readonly level: Level
  /** asks for a fault of this kind, when practice is to return to it */
  readonly kind?: FaultKind
}

export interface Drill {
  readonly request: DrillRequest
  readonly job: JobId
  /** how the job should run */
  readonly ticket: SetUp
  /** how it runs; not to be shown before the drill is solved */
  readonly press: SetUp
  readonly faults: readonly Fault[]
  /** the piece of evidence that misleads, and the fault it looks like */
  readonly misleading: { readonly evidence: Evidence & { kind: MisleadingKind }; readonly looksLike: Fault }
  /** what may be named as the cause, in the order of all causes */
  readonly offered: readonly Cause[]
  /** what every quantity reads without noise, the misleading one included; see evidence.ts for the order */
  readonly readings: Float64Array
  /** how many were drawn before this one could be solved */
  readonly drawnBefore: number
}

/** More than any of the requests tried has needed (tests hold the most seen well below). */
const mostDraws = 400

/**
 * As long as this many draws, a drill is drawn again when its sheet alone tells the cause, since a diagnosis should need
 * measuring; after that it is taken, as nothing looks like some faults.
 */
const drawsForDoubt = 25
/** Standard deviations from the sheet to the nearest other explanation below which the sheet leaves it open: chosen. */
const sheetTellsAt = 2

export function makeDrill(request: DrillRequest): Drill {
  const draw = seededDraws(request.seed, drillStream + levels.indexOf(request.level))
  // The kind is drawn once, so that kinds hard to make solvable come up as often as the others.
  const kind = request.kind ?? drawKind(draw)
  for (let drawnBefore = 0; drawnBefore < mostDraws; drawnBefore++) {
    const drill = drawDrill(request, kind, draw, drawnBefore)
    if (!drill || !isSolvable(drill)) continue
    if (drawnBefore >= drawsForDoubt || !isToldBySheet(drill)) return drill
  }
  throw new Error(
    `No solvable drill was found for seed ${request.seed}, level ${request.level} and the kind ${kind} in ${mostDraws} draws.`,
  )
}

/** The kind of the first fault in the drill of a request that asks for none. */
export function kindDrawn({ seed, level }: Pick<DrillRequest, 'seed' | 'level'>): FaultKind {
  return drawKind(seededDraws(seed, drillStream + levels.indexOf(level)))
}

function drawKind(draw: Draw): FaultKind {
  return pick(draw, pick(draw, faultFamilies))
}

const drillStream = 80

type Draw = () => number

function pick<Item>(draw: Draw, items: readonly Item[]): Item {
  return items[Math.floor(draw() * items.length)]
}

function drawDrill(request: DrillRequest, kind: FaultKind, draw: Draw, drawnBefore: number): Drill | null {
  const rules = levelRules[request.level]
  const job = pick(draw, jobIds)
  const book = casebookOf(job)
  const faults = drawFaults(book, kind, rules, draw)
  if (!faults) return null
  const press = withFaults(book.ticket, faults)
  const readings = expectedReadings(book.ticket, press, book.quantities)
  if (!isNoticed(book, readings)) return null
  const looksLike = drawMisleading(book, faults, rules, draw)
  const evidence = looksLike && directEvidence(looksLike)
  if (!evidence) return null
  mislead(book, readings, evidence, looksLike)
  const offered = drawOffered(book, faults, looksLike, rules.offered)
  const misleading = { evidence, looksLike }
  return { request, job, ticket: book.ticket, press, faults, misleading, offered, readings, drawnBefore }
}

/** Faults that each alone would be noticed, the first of this kind; null where the job cannot have them. */
function drawFaults(book: Casebook, kind: FaultKind, rules: LevelRules, draw: Draw): Fault[] | null {
  const faults: Fault[] = []
  for (let count = 0; count < rules.faults; count++) {
    const wanted = count === 0 ? kind : pick(draw, pick(draw, faultFamilies))
    const possible = book.causes.filter((cause) => cause.kind === wanted)
    if (possible.length === 0) return null
    const fault = sized(pick(draw, possible), rules, draw)
    if (faults.length > 0 && explanations([...faults, fault], 2).length === 0) return null
    if (!isNoticed(book, readingsAt(curveOf(book, fault), fault.size))) return null
    faults.push(fault)
  }
  return faults
}

function sized(cause: Cause, { sizesFrom }: LevelRules, draw: Draw): Fault {
  const { least, most } = faultSizes[cause.kind]
  return { ...cause, size: least + (most - least) * (sizesFrom + (1 - sizesFrom) * draw()) }
}

/** A fault that is not there, of a kind that one measurement shows, and not the one that shows a real fault. */
function drawMisleading(book: Casebook, faults: readonly Fault[], rules: LevelRules, draw: Draw): Fault | null {
  const taken = faults.map(directKey)
  const possible = book.causes.filter((cause) => directEvidence(cause) && !taken.includes(directKey(cause)))
  const fault = sized(pick(draw, possible), rules, draw)
  return canShow(book, fault) ? fault : null
}

/** Puts the misleading reading in place of the true one. */
function mislead(book: Casebook, readings: Float64Array, evidence: Evidence, looksLike: Fault): void {
  const wrong = readingsAt(curveOf(book, looksLike), looksLike.size)
  book.keys.forEach((key, index) => {
    if (key === evidenceKey(evidence)) readings[index] = wrong[index]
  })
}

/** The true causes, the one the misleading reading speaks for, and those whose sheets look most like the true ones'. */
function drawOffered(book: Casebook, faults: readonly Fault[], looksLike: Fault, count: number): Cause[] {
  const offered: Cause[] = [...faults, looksLike].map(({ kind, unit }) => ({ kind, unit }))
  const isOffered = (cause: Cause) => offered.some((each) => sameCause(each, cause))
  const alike = faults.map((fault) => lookingAlike(book, readingsAt(curveOf(book, fault), fault.size)))
  for (let turn = 0; offered.length < count && turn < count * alike.length; turn++) {
    const rival = alike[turn % alike.length].find((cause) => !isOffered(cause))
    if (rival) offered.push(rival)
  }
  return book.causes.filter(isOffered)
}

/** The job's causes, that which makes a sheet most like one with these readings first. */
function lookingAlike(book: Casebook, readings: Float64Array): Cause[] {
  const sheet = allEvidence(book.ticket).filter(isOfSheet)
  const causes = book.causes.filter((cause) => canShow(book, cause))
  return causes
    .map((cause) => ({ cause, apart: distance(book, readings, [cause], sheet) }))
    .sort((a, b) => a.apart - b.apart)
    .map(({ cause }) => cause)
}

/** Most standard deviations between the readings and what the true explanation would give: two faults have to add up. */
const explainedWithin = 2

/** Whether the true explanation gives these readings, and all evidence together rules out every other. */
function isSolvable(drill: Drill): boolean {
  const all = allEvidence(drill.ticket)
  const off = distance(casebookOf(drill.job), drill.readings, drill.faults, all)
  return off < explainedWithin && identifies(drill, all)
}

function isToldBySheet(drill: Drill): boolean {
  const sheet = allEvidence(drill.ticket).filter(isOfSheet)
  return rivalsOf(drill).every((rival) => distance(casebookOf(drill.job), drill.readings, rival, sheet) >= sheetTellsAt)
}

function isOfSheet({ kind }: Evidence): boolean {
  return sheetEvidence.some((each) => each === kind)
}

/** Whether this evidence rules out every other explanation. */
export function identifies(drill: Drill, evidence: readonly Evidence[]): boolean {
  return rivalsOf(drill).every((rival) => isRuledOut(drill, rival, evidence))
}

/** The other explanations among the offered causes that this evidence does not rule out. */
export function notRuledOut(drill: Drill, evidence: readonly Evidence[]): Cause[][] {
  return rivalsOf(drill).filter((rival) => !isRuledOut(drill, rival, evidence))
}

function isRuledOut(drill: Drill, rival: readonly Cause[], evidence: readonly Evidence[]): boolean {
  return distance(casebookOf(drill.job), drill.readings, rival, evidence) >= ruledOutAt
}

/** Every explanation but the true one. */
export function rivalsOf({ offered, faults }: Drill): Cause[][] {
  const truth = new Set(faults.map(causeKey))
  return explanations(offered, faults.length).filter((causes) => !causes.every((cause) => truth.has(causeKey(cause))))
}
