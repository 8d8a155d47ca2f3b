/**
 * Goes through a lesson the author's own way, without a page, and proves it: each expectation can be reached, none is
 * true before anything was done, every claim about the bench holds, and only controls the learner has are used.
 */
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import type { Action } from './action.ts'
import { act, controlFor } from './action.ts'
import type { Bench } from './bench.ts'
import { benchOf } from './bench.ts'
import type { Control } from './control.ts'
import { controls } from './control.ts'
import type { BenchExpectation } from './expectation.ts'
import { isQuestion } from './expectation.ts'
import type { Finding } from './judge.ts'
import { isMistake, judgeBench, judgeStep } from './judge.ts'
import type { Lesson } from './lesson.ts'
import { nameOfReading } from './reading.ts'
import type { Path } from './source.ts'
import type { AskedStep, Step, WayStep } from './step.ts'
import { answerOf } from './step.ts'
import type { Located } from './term-order.ts'

/** The bench before the first step. */
export function startOf({ start, seed }: Pick<Lesson, 'start' | 'seed'>): Bench {
  return benchOf(seed === undefined ? start : { ...start, seed })
}

/** The controls a learner may use. */
export function openControls({ show, lock }: Pick<Lesson, 'show' | 'lock'>): Control[] {
  return (show ?? controls).filter((control) => !lock.includes(control))
}

export function checkReplay(lesson: Lesson): Located[] {
  const problems: Located[] = []
  const open = openControls(lesson)
  let bench = startOf(lesson)
  for (const [at, step] of lesson.steps.entries()) {
    const path = ['steps', at]
    bench = perform(bench, step.changes ?? [], [...path, 'changes'], problems)
    problems.push(...standProblems(step, bench, path))
    const index = lesson.solution.findIndex((way) => way.step === step.id)
    const way = index >= 0 ? lesson.solution[index] : undefined
    const wayPath = ['solution', index]
    const before = bench
    if (way?.changes) {
      problems.push(...closedControls(way.changes, open, [...wayPath, 'changes']))
      bench = perform(bench, way.changes, [...wayPath, 'changes'], problems)
    }
    problems.push(...claimProblems(step, bench, path))
    if (step.kind === 'predict') problems.push(...predictProblems(step, way, wayPath, path))
    if (step.kind !== 'do' && step.kind !== 'expect') continue
    const asked = askedProblems(step, before, bench, way, path)
    problems.push(...asked, ...feedbackProblems(step, before, bench, way, path, open))
    if (asked.some(({ stops }) => stops)) return [...problems, ...unreached(lesson, at)]
  }
  return problems
}

/** The bench after these changes; one that cannot be made becomes a problem and is left out. */
function perform(bench: Bench, actions: readonly Action[], path: Path, problems: Located[]): Bench {
  return actions.reduce((now, action, at) => {
    const next = act(now, action)
    if (!('problem' in next)) return next
    problems.push({ path: [...path, at], said: next.problem })
    return now
  }, bench)
}

function closedControls(actions: readonly Action[], open: readonly Control[], path: Path): Located[] {
  return actions.flatMap((action, at) => {
    const control = controlFor(action)
    if (control === undefined) {
      return [
        {
          path: [...path, at],
          said: said('checker.wholeSetUp'),
        },
      ]
    }
    if (open.includes(control)) return []
    return [{ path: [...path, at], said: said('checker.closed', { word: control }) }]
  })
}

/** Where the sheet cannot stand: at a unit that the press does not have, or at two places. */
function standProblems({ sheetAfter, sheetIn }: Step, { setUp }: Bench, path: Path): Located[] {
  const units = setUp.inks.length
  const missing = Object.entries({ sheetAfter, sheetIn }).flatMap(([field, unit]) =>
    unit === undefined || unit <= units
      ? []
      : [
          {
            path: [...path, field],
            said: said('checker.noUnit', { given: unit, most: units }),
          },
        ],
  )
  if (sheetAfter === undefined || sheetIn === undefined) return missing
  return [...missing, { path: [...path, 'sheetIn'], said: said('checker.sheetTwice') }]
}

function claimProblems(step: Step, bench: Bench, path: Path): Located[] {
  return (step.claims ?? []).flatMap((claim, at) => {
    const finding = judgeBench(claim, bench)
    return finding.met
      ? []
      : [{ path: [...path, 'claims', at], said: said('checker.claimNotSo', { shows: whatIs(finding, bench) }) }]
  })
}

function predictProblems(
  step: Extract<Step, { kind: 'predict' }>,
  way: WayStep | undefined,
  wayPath: Path,
  path: Path,
): Located[] {
  if (way?.choose === undefined) {
    return [{ path: [...path, 'id'], said: said('checker.noAnswer', { id: step.id }) }]
  }
  if (way.choose === step.right) return []
  return [
    {
      path: [...wayPath, 'choose'],
      said: said('checker.wrongAnswer', { otherId: way.choose, id: step.id, word: step.right }),
    },
  ]
}

interface AskedProblem extends Located {
  /** nothing after this step can be reached */
  stops: boolean
}

function askedProblems(
  step: AskedStep,
  before: Bench,
  after: Bench,
  way: WayStep | undefined,
  path: Path,
): AskedProblem[] {
  const expectPath = [...path, 'expect']
  const index = step.expect.findIndex(isQuestion)
  const question = step.expect.find(isQuestion)
  if (way === undefined) {
    return [{ path: [...path, 'id'], said: said('checker.noWay', { id: step.id }), stops: true }]
  }
  if (question?.is === 'sequence' && question.items.every(({ id }, at) => id === question.right[at])) {
    return [{ path: [...expectPath, index, 'items'], said: said('checker.itemsInOrder'), stops: false }]
  }
  if (index < 0 && judgeStep(step, before).met) {
    return [{ path: expectPath, said: said('checker.alreadyTrue'), stops: false }]
  }
  const { findings } = judgeStep(step, after, answerOf(way))
  return findings.flatMap((finding, at) =>
    finding.met
      ? []
      : {
          path: [...expectPath, at],
          said: said('checker.notReached', { shows: whatIs(finding, after) }),
          stops: true,
        },
  )
}

/** Feedback that comes although the step is solved, or that does not come when its mistake is made. */
function feedbackProblems(
  step: AskedStep,
  before: Bench,
  after: Bench,
  way: WayStep | undefined,
  path: Path,
  open: readonly Control[],
): Located[] {
  const answer = way && answerOf(way)
  return (step.feedback ?? []).flatMap(({ when, after: mistaken }, at) => {
    const here = [...path, 'feedback', at]
    if (isMistake(when, after, answer)) {
      return [{ path: [...here, 'when'], said: said('checker.noMistake') }]
    }
    if (!mistaken) return []
    const problems = closedControls(mistaken, open, [...here, 'after'])
    const wrong = perform(before, mistaken, [...here, 'after'], problems)
    if (isMistake(when, wrong, answer)) return problems
    const unheld =
      when.is === 'number' || when.is === 'sequence'
        ? said('checker.noFeedback')
        : said('checker.noFeedbackAs', { shows: whatIs(judgeBench(when, wrong), wrong) })
    return [...problems, { path: [...here, 'when'], said: unheld }]
  })
}

function unreached({ steps }: Lesson, stoppedAt: number): Located[] {
  return steps.slice(stoppedAt + 1).map((step, index) => ({
    path: ['steps', stoppedAt + 1 + index, 'id'],
    said: said('checker.unreachable', { id: step.id, otherId: steps[stoppedAt].id }),
  }))
}

/** What the bench has instead. */
function whatIs({ expectation, value, unit, unread }: Finding, { setUp, patch }: Bench): ProblemSaid {
  if (unread) return unread.problem
  if ('reading' in expectation && value !== undefined && unit !== undefined) {
    return said('checker.shows.reading', { reading: nameOfReading(expectation.reading), value, unit })
  }
  return isQuestion(expectation) ? said('checker.shows.wrongAnswer') : has(expectation, setUp, patch)
}

function has(
  { is }: BenchExpectation,
  { inks, paper, press, reading }: Bench['setUp'],
  patch: readonly string[],
): ProblemSaid {
  switch (is) {
    case 'order':
      return said('checker.shows.order', { inks: inks.map((ink) => ink.name).join(', ') })
    case 'paper':
      return said('checker.shows.paper', { word: paper.name })
    case 'kind':
      return said('checker.shows.kind', { word: press.kind })
    case 'waterless':
      return said('checker.shows.water', { waterless: press.waterless ? 'yes' : 'no' })
    case 'sheet':
      return said('checker.shows.sheet', { word: typeof reading === 'object' ? reading.sheet : reading })
    default:
      return said('checker.shows.patch', { inks: patch.join(', ') })
  }
}
