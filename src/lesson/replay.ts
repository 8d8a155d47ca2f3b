/**
 * Goes through a lesson the author's own way, without a page, and proves it: each expectation can be reached, none is
 * true before anything was done, every claim about the bench holds, and only controls the learner has are used.
 */
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
    problems.push({ path: [...path, at], message: next.problem })
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
          message: 'a whole set-up is loaded by the lesson (changes of a step), not by the learner',
        },
      ]
    }
    if (open.includes(control)) return []
    return [
      { path: [...path, at], message: `${control} is hidden or locked in this lesson, so the learner cannot do this` },
    ]
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
            message: `there is no unit ${String(unit)} on this press; allowed are 1 to ${String(units)}`,
          },
        ],
  )
  if (sheetAfter === undefined || sheetIn === undefined) return missing
  return [
    ...missing,
    { path: [...path, 'sheetIn'], message: 'the sheet is after a unit or in its nip; keep one of them' },
  ]
}

function claimProblems(step: Step, bench: Bench, path: Path): Located[] {
  return (step.claims ?? []).flatMap((claim, at) => {
    const finding = judgeBench(claim, bench)
    return finding.met ? [] : [{ path: [...path, 'claims', at], message: `is not so: ${whatIs(finding, bench)}` }]
  })
}

function predictProblems(
  step: Extract<Step, { kind: 'predict' }>,
  way: WayStep | undefined,
  wayPath: Path,
  path: Path,
): Located[] {
  if (way?.choose === undefined) {
    return [{ path: [...path, 'id'], message: `the solution does not choose an answer for the prediction ${step.id}` }]
  }
  if (way.choose === step.right) return []
  return [
    {
      path: [...wayPath, 'choose'],
      message: `${way.choose} is not the right answer of ${step.id}, which is ${step.right}`,
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
    return [{ path: [...path, 'id'], message: `the solution does not say how ${step.id} is done`, stops: true }]
  }
  if (question?.is === 'sequence' && question.items.every(({ id }, at) => id === question.right[at])) {
    return [
      { path: [...expectPath, index, 'items'], message: 'the items already stand in the right order', stops: false },
    ]
  }
  if (index < 0 && judgeStep(step, before).met) {
    return [{ path: expectPath, message: 'is already true before the learner has done anything', stops: false }]
  }
  const { findings } = judgeStep(step, after, answerOf(way))
  return findings.flatMap((finding, at) =>
    finding.met
      ? []
      : {
          path: [...expectPath, at],
          message: `is not reached by the solution: ${whatIs(finding, after)}`,
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
      return [{ path: [...here, 'when'], message: 'also holds when the step is solved, so it describes no mistake' }]
    }
    if (!mistaken) return []
    const problems = closedControls(mistaken, open, [...here, 'after'])
    const wrong = perform(before, mistaken, [...here, 'after'], problems)
    if (isMistake(when, wrong, answer)) return problems
    const shows = when.is === 'number' || when.is === 'sequence' ? '' : `: ${whatIs(judgeBench(when, wrong), wrong)}`
    return [...problems, { path: [...here, 'when'], message: `does not hold after these changes${shows}` }]
  })
}

function unreached({ steps }: Lesson, stoppedAt: number): Located[] {
  return steps.slice(stoppedAt + 1).map((step, index) => ({
    path: ['steps', stoppedAt + 1 + index, 'id'],
    message: `${step.id} cannot be reached, as ${steps[stoppedAt].id} is never done`,
  }))
}

/** What the bench has instead. */
function whatIs({ expectation, value, unit, unread }: Finding, { setUp, patch }: Bench): string {
  if (unread) return unread.problem
  if ('reading' in expectation && value !== undefined) {
    return `${nameOfReading(expectation.reading)} reads ${value.toFixed(2)} ${unit ?? ''}`.trim()
  }
  return isQuestion(expectation) ? 'the answer is not the right one' : has(expectation, setUp, patch)
}

function has(
  { is }: BenchExpectation,
  { inks, paper, press, reading }: Bench['setUp'],
  patch: readonly string[],
): string {
  switch (is) {
    case 'order':
      return `the order is ${inks.map((ink) => ink.name).join(', ')}`
    case 'paper':
      return `the paper is ${paper.name}`
    case 'kind':
      return `the press is ${press.kind}`
    case 'waterless':
      return `the press is ${press.waterless ? 'waterless' : 'dampened'}`
    case 'sheet':
      return `the sheet read is ${typeof reading === 'object' ? String(reading.sheet) : reading}`
    default:
      return `the patch looked at is ${patch.join(', ')}`
  }
}
