/** A class as tables to be shown and saved. Headings come from the catalogue by way of `say`. */
import type { CauseCount } from '../class/count-drills.ts'
import type { LearnerCount } from '../class/count-learners.ts'
import type { LessonCount, StepCount } from '../class/count-lessons.ts'
import type { RefusedFile } from '../class/read-files.ts'
import type { Spread } from '../class/spread.ts'
import type { FaultKind } from '../drill/cause.ts'
import type { BoardKey } from '../words/en/board.ts'
import type { Table } from './csv.ts'

type SayBoard = (key: BoardKey, values?: Record<string, string | number>) => string

const percent = '%'

export function lessonsTable(counts: readonly LessonCount[], titleOf: (key: string) => string, say: SayBoard): Table {
  return {
    columns: [
      { heading: say('board.lesson'), unit: null },
      { heading: say('board.began'), unit: null },
      { heading: say('board.finished'), unit: null },
      { heading: say('board.scoreLeast'), unit: percent },
      { heading: say('board.scoreMiddle'), unit: percent },
      { heading: say('board.scoreMost'), unit: percent },
      { heading: say('board.timeMiddle'), unit: say('board.minutes') },
      { heading: say('board.timeMost'), unit: say('board.minutes') },
    ],
    rows: counts.map(({ key, began, finished, score, time }) => [
      titleOf(key),
      began,
      finished,
      inPercent(score?.least),
      inPercent(score?.middle),
      inPercent(score?.most),
      ...inMinutes(time),
    ]),
  }
}

export function stepsTable(steps: readonly StepCount[], nameOf: (step: StepCount) => string, say: SayBoard): Table {
  return {
    columns: [
      { heading: say('board.step'), unit: null },
      { heading: say('board.reached'), unit: null },
      { heading: say('board.stepDone'), unit: null },
      { heading: say('board.firstGo'), unit: percent },
    ],
    rows: steps.map((step) => {
      const share = step.kind === 'say' || step.done === 0 ? null : (100 * step.firstGo) / step.done
      return [nameOf(step), step.reached, step.done, share]
    }),
  }
}

export function causesTable(counts: readonly CauseCount[], say: SayBoard): Table {
  return {
    columns: [
      { heading: say('board.cause'), unit: null },
      { heading: say('board.drills'), unit: null },
      { heading: say('board.hit'), unit: percent },
      { heading: say('board.proven'), unit: percent },
      { heading: say('board.timeMiddle'), unit: say('board.minutes') },
      { heading: say('board.timeMost'), unit: say('board.minutes') },
    ],
    rows: counts.map(({ kind, hidden, hit, proven, time }) => [
      say(`board.cause.${kind}`),
      hidden,
      (100 * hit) / hidden,
      (100 * proven) / hidden,
      ...inMinutes(time),
    ]),
  }
}

/** Down: what was hidden; across: what was named although it was not there. Only kinds that came up. */
export function confusionTable(counts: readonly CauseCount[], say: SayBoard): Table {
  const named = new Map<FaultKind, number>()
  for (const { confused } of counts) {
    for (const { kind, drills } of confused) named.set(kind, (named.get(kind) ?? 0) + drills)
  }
  const across = [...named].sort(([, one], [, other]) => other - one).map(([kind]) => kind)
  return {
    columns: [
      { heading: say('board.hidden'), unit: null },
      ...across.map((kind) => ({ heading: say(`board.cause.${kind}`), unit: null })),
    ],
    rows: counts
      .filter(({ confused }) => confused.length > 0)
      .map(({ kind, confused }) => [
        say(`board.cause.${kind}`),
        ...across.map((other) => confused.find((each) => each.kind === other)?.drills ?? 0),
      ]),
  }
}

/** `sayLeft` tells lessons shortly, as a row may name all of them. */
export function learnersTable(
  counts: readonly LearnerCount[],
  sayLeft: (keys: readonly string[]) => string,
  sayMoment: (moment: string) => string,
  say: SayBoard,
): Table {
  return {
    columns: [
      { heading: say('board.learner'), unit: null },
      { heading: say('board.group'), unit: null },
      { heading: say('board.finished'), unit: null },
      { heading: say('board.left'), unit: null },
      { heading: say('board.score'), unit: percent },
      { heading: say('board.drills'), unit: null },
      { heading: say('board.provenCount'), unit: null },
      { heading: say('board.time'), unit: say('board.minutes') },
      { heading: say('board.made'), unit: null },
    ],
    rows: counts.map(({ learner, nameShared, finished, left, score, drills, proven, time }) => [
      learnerName(learner, nameShared, say),
      learner.group,
      finished.length,
      sayLeft(left),
      score === null ? null : 100 * score,
      drills,
      proven,
      time / 60,
      sayMoment(learner.made),
    ]),
  }
}

export function refusedTable(refused: readonly RefusedFile[], say: SayBoard): Table {
  return {
    columns: [
      { heading: say('board.file'), unit: null },
      { heading: say('board.why'), unit: null },
    ],
    rows: refused.map(({ file, message, values }) => [file, say(message, { ...values })]),
  }
}

/** Characters of an id that tell two learners of one name apart. */
const idShown = 8

function learnerName({ name, id }: LearnerCount['learner'], nameShared: boolean, say: SayBoard): string {
  const short = id.slice(0, idShown)
  if (name === '') return say('board.nameless', { id: short })
  return nameShared ? say('board.namesake', { name, id: short }) : name
}

function inPercent(share: number | undefined): number | null {
  return share === undefined ? null : 100 * share
}

function inMinutes(time: Spread | null): [number | null, number | null] {
  return time ? [time.middle / 60, time.most / 60] : [null, null]
}
