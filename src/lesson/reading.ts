/**
 * What an expectation may be about: everything the bench reads off a sheet or shows of its set-up, each with its unit.
 * A further reading is one more entry in `readings`.
 */
import * as v from 'valibot'
import type { DensityFilter } from '../colour/data/density-weights.ts'
import { densityFilters } from '../colour/density.ts'
import { trapAt } from '../measure/patch-trap.ts'
import { isRefused } from '../measure/said.ts'
import { readPatch } from '../measure/strip.ts'
import type { NipAccount } from '../press/account.ts'
import { nipAccount } from '../press/account.ts'
import type { ProblemSaid } from '../press/problem.ts'
import { said } from '../press/problem.ts'
import { patchOf } from '../press/patches.ts'
import { dampeningAt, temperatureAt } from '../press/setup.ts'
import type { Bench } from './bench.ts'
import { readingsOf, stripFor, unitOf } from './bench.ts'
import { fields, inkName, kindMessage, listOf, oneOf } from './field.ts'
import type { LessonKey } from '../words/en/lesson.ts'

/** Where a reading is taken: which ink, on, by or in which others; each kind of reading names the ones it needs. */
interface Where {
  of?: string | undefined
  on?: string | undefined
  by?: string | undefined
  in?: readonly string[] | undefined
  through?: DensityFilter | undefined
}

/** The same as numbers of units, from 0. */
interface Units {
  of: number
  on: number
  by: number
  in: readonly number[] | undefined
  through: DensityFilter
}

/** Why a reading cannot be taken: for an author, and as a message of the catalogue for a learner. */
export interface Unread {
  problem: ProblemSaid
  message: LessonKey
  /** names of inks, for the message */
  values: Readonly<Record<string, string>>
}

interface ReadingKind {
  /** as a lesson writes it and the bench shows it */
  unit: string
  /** the ink, and the others, it is read from */
  needs: readonly (keyof Where)[]
  mayHave: readonly (keyof Where)[]
  /** read off the printed sheet or the rollers, and not off a control */
  measured: boolean
  /** the value in `unit`, or why there is none */
  read: (bench: Bench, units: Units) => number | Unread
}

export const readings = {
  'mass trap': {
    unit: '%',
    needs: ['of', 'on'],
    mayHave: [],
    measured: true,
    read: ({ setUp }, { of, on }) => {
      const trap = readingsOf(setUp).traps.find(({ earlier, later }) => earlier === on && later === of)
      if (trap) return 100 * trap.massTrap
      return notAfter('checker.noTrap', setUp.inks[of].name, setUp.inks[on].name)
    },
  },
  film: {
    unit: 'um',
    needs: ['of', 'in'],
    mayHave: [],
    measured: true,
    read: ({ setUp }, units) => readingsOf(setUp).films[patchOf(units.in ?? [])][units.of],
  },
  lifted: {
    unit: '%',
    needs: ['of', 'by'],
    mayHave: [],
    measured: true,
    read: ({ setUp }, { of, by }) => {
      if (of < by) return 100 * readingsOf(setUp).lifted[by][of]
      return notAfter('checker.noLifting', setUp.inks[by].name, setUp.inks[of].name)
    },
  },
  picked: {
    unit: '%',
    needs: [],
    mayHave: ['in'],
    measured: true,
    read: ({ setUp }, units) => {
      const { torn, worstTorn } = readingsOf(setUp)
      return 100 * (units.in ? torn[patchOf(units.in)] : worstTorn)
    },
  },
  contamination: {
    unit: '%',
    needs: ['of'],
    mayHave: [],
    measured: true,
    read: ({ setUp }, { of }) => 100 * readingsOf(setUp).contamination[of],
  },
  /** tack units at which a film gives way in a nip, as its bar shows them */
  pull: {
    unit: 'tack units',
    needs: ['of', 'by', 'in'],
    mayHave: [],
    measured: true,
    read: (bench, units) => filmAt(bench, units)?.pull ?? noFilm,
  },
  /** of all spots: those in which a film gave way in a nip, as "What happened" counts them */
  'gave way': {
    unit: '%',
    needs: ['of', 'by', 'in'],
    mayHave: [],
    measured: true,
    read: (bench, units) => {
      const film = filmAt(bench, units)
      return film === undefined || film.pull === null
        ? noFilm
        : 100 * nipOf(bench, units.by, units).contact * film.broke
    },
  },
  /** the same of the paper: where it tears in that one nip */
  torn: {
    unit: '%',
    needs: ['by', 'in'],
    mayHave: [],
    measured: true,
    read: (bench, units) => {
      const { contact, torn } = nipOf(bench, units.by, units)
      return 100 * contact * torn
    },
  },
  /** the film on a blanket as it meets the sheet */
  brought: {
    unit: 'um',
    needs: ['of', 'in'],
    mayHave: [],
    measured: true,
    read: (bench, units) => nipOf(bench, units.of, units).blanket.thickness,
  },
  /** what leaves the sheet with a blanket, and what the blanket leaves on it, all inks together */
  'taken up': {
    unit: 'um',
    needs: ['by', 'in'],
    mayHave: [],
    measured: true,
    read: (bench, units) => total(nipOf(bench, units.by, units).lifted),
  },
  'given back': {
    unit: 'um',
    needs: ['by', 'in'],
    mayHave: [],
    measured: true,
    read: (bench, units) => total(nipOf(bench, units.by, units).laid),
  },
  /** minus paper, status T */
  density: {
    unit: 'density',
    needs: ['in', 'through'],
    mayHave: [],
    measured: true,
    read: ({ setUp }, { in: inks, through }) => {
      const { colour } = readPatch(stripFor(setUp), patchOf(inks ?? []))
      if (!isRefused(colour)) return colour.densitiesMinusPaper.T[through]
      return { problem: said('checker.noColour'), message: 'lesson.noColour', values: {} }
    },
  },
  /** by the Preucil equation, status T, through the filter for the second ink */
  'apparent trap': {
    unit: '%',
    needs: ['of', 'on'],
    mayHave: [],
    measured: true,
    read: ({ setUp }, { of, on }) => {
      const [later, earlier] = [setUp.inks[of].name, setUp.inks[on].name]
      if (of <= on) return notAfter('checker.noTrap', later, earlier)
      const trap = trapAt(stripFor(setUp), patchOf([on, of]), 'T')
      if (trap !== null && !isRefused(trap.apparent)) return trap.apparent.percent.preucil
      return {
        problem: said('checker.noApparentTrap', { later, earlier }),
        message: 'lesson.noApparentTrap',
        values: {},
      }
    },
  },
  tack: control('tack units', ['of'], ({ setUp }, { of }) => setUp.inks[of].tack),
  'form roller film': control('um', ['of'], ({ setUp }, { of }) => setUp.inks[of].film),
  coverage: control('%', ['of'], ({ setUp }, { of }) => 100 * setUp.inks[of].coverage),
  temperature: control('degC', ['of'], ({ setUp }, { of }) => temperatureAt(setUp.press, setUp.inks[of])),
  dampening: control('times normal', ['of'], ({ setUp }, { of }) => dampeningAt(setUp.press, setUp.inks[of])),
  speed: control('m/s', [], ({ setUp }) => setUp.press.speed),
  interval: control('s', [], ({ setUp }) => setUp.press.interval),
  'surface strength': control('tack units', [], ({ setUp }) => setUp.paper.surfaceStrength),
} satisfies Record<string, ReadingKind>

export type ReadingName = keyof typeof readings
export const readingNames = Object.keys(readings) as ReadingName[]

function notAfter(problem: 'checker.noTrap' | 'checker.noLifting', later: string, earlier: string): Unread {
  const values = { later, earlier }
  return { problem: said(problem, values), message: 'lesson.notAfter', values }
}

/** What happened at the nip of a unit, in the patch that is read. */
function nipOf({ setUp }: Bench, unit: number, units: Units): NipAccount {
  return nipAccount(stripFor(setUp).run, unit, patchOf(units.in ?? []))
}

/** The film that one unit laid or brings, at the nip of another; undefined where it is not there yet. */
function filmAt(bench: Bench, units: Units): NipAccount['blanket'] | undefined {
  const { films, blanket } = nipOf(bench, units.by, units)
  return units.of === units.by ? blanket : films.at(units.of)
}

function total(amounts: readonly number[]): number {
  return amounts.reduce((sum, um) => sum + um, 0)
}

const noFilm: Unread = { problem: said('checker.noFilm'), message: 'lesson.noFilm', values: {} }

function control(unit: string, needs: readonly (keyof Where)[], read: ReadingKind['read']): ReadingKind {
  return { unit, needs, mayHave: [], measured: false, read }
}

const whereFields = {
  of: inkName,
  on: inkName,
  by: inkName,
  in: listOf(inkName, 'inks', 1, 8),
  through: oneOf('filter', densityFilters),
}

function readingFields<const Name extends ReadingName>(what: Name) {
  const { needs, mayHave }: ReadingKind = readings[what]
  return fields(['reading', what], {
    what: v.literal(what),
    ...Object.fromEntries(needs.map((field) => [field, whereFields[field]])),
    ...Object.fromEntries(mayHave.map((field) => [field, v.exactOptional(whereFields[field])])),
  })
}

/** A reading as a lesson names it: what is read, and of, on, by or in which inks. */
export interface ReadingRef extends Where {
  what: ReadingName
}

export const readingSchema = v.pipe(
  v.variant('what', readingNames.map(readingFields), kindMessage('reading', 'what', readingNames)),
  v.transform((reading) => reading as ReadingRef),
)

/** The reading's value in its own unit, or why the bench does not give one. */
export function read(bench: Bench, { what, ...where }: ReadingRef): number | Unread {
  const found = Object.fromEntries(
    (['of', 'on', 'by'] as const).flatMap((field) => {
      const name = where[field]
      return name === undefined ? [] : [[field, unitOrMissing(bench, name)]]
    }),
  )
  const patch = where.in?.map((name) => unitOrMissing(bench, name))
  for (const unit of [...Object.values(found), ...(patch ?? [])]) {
    if (typeof unit !== 'number') return unit
  }
  return readings[what].read(bench, {
    of: 0,
    on: 0,
    by: 0,
    ...found,
    in: patch as number[] | undefined,
    through: where.through ?? 'green',
  })
}

function unitOrMissing({ setUp }: Bench, name: string): number | Unread {
  const unit = unitOf(setUp, name)
  return typeof unit === 'number' ? unit : { ...unit, message: 'lesson.notOnPress', values: { missing: name } }
}

/** "mass trap of yellow on cyan", for an author; a learner is told in the words of the catalogue */
export function nameOfReading({ what, of = none, on = none, by = none, in: patch, through }: ReadingRef): ProblemSaid {
  const inks = patch?.join(', ') ?? none
  return said('checker.reading', { word: what, of, on, by, inks, through: through ?? none })
}

/** What a message takes for something that is not there. */
const none = 'none'
