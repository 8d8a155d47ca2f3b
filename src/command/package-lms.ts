/**
 * `npm run --silent package:lms -- --standard scorm-1.2 --lessons tack,contamination --drills 3 --mastery 0.8`: a zip to be
 * uploaded to a learning system. It needs the page in one file, which `npm run build:file` makes.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { IntlMessageFormat } from 'intl-messageformat'
import * as v from 'valibot'
import { lessonFile, readCourse } from '../lesson/check-course.ts'
import { lessonSchema } from '../lesson/lesson.ts'
import { readSource } from '../lesson/source.ts'
import { contentsOf } from '../report/learning-package/contents-of.ts'
import { packageName, packageZip } from '../report/learning-package/package-files.ts'
import type { Parcel, Standard } from '../report/learning-system/launch.ts'
import { mostDrills, standards } from '../report/learning-system/launch.ts'
import { closestOf } from '../session/closest.ts'
import { learningSystem } from '../words/en/learning-system.ts'
import type { Command } from './command.ts'
import { InputProblem } from './read-input.ts'

const folder = join(import.meta.dirname, '../..')
const course = readCourse(readFileSync(join(folder, 'lessons/course.yaml'), 'utf8')).course?.lessons ?? []

const help = `package:lms: makes a zip for a learning system.
  --standard S   ${standards.join(', ')}
  --lessons L    ids joined by commas, in the order they are taken, or none; all ${course.length} of the course where it is left out
  --drills N     how many fault drills belong to it, 0 to ${mostDrills}; 0 where it is left out
  --mastery M    share of 1 from which it counts as passed; no pass mark where it is left out
  --page FILE    the page in one file; dist/tackstair.html where it is left out
  --out FILE     where the zip goes; ${packageName('scorm-1.2')} and so on where it is left out
Lessons: ${course.join(', ')}`

export const packageLms: Command = {
  usage: `package:lms: give --standard (${standards.join(', ')}); --help tells the rest`,
  work: (args, streams) => {
    const given = read(args)
    if (given.help) {
      streams.out(help)
      return 0
    }
    const standard = standardIn(given.standard)
    const parcel: Parcel = {
      lessons: lessonsIn(given.lessons),
      drills: drillsIn(given.drills),
      mastery: masteryIn(given.mastery),
    }
    if (parcel.lessons.length + parcel.drills === 0) {
      throw new InputProblem('package:lms: nothing is in the package; give a lesson, or at least one drill')
    }
    const zip = packageZip(contentsOf({ standard, parcel }, titleOf, 'en', say), page(given.page))
    if (!zip) {
      throw new InputProblem(`--page: ${given.page} is not the page in one file; make it by npm run build:file`)
    }
    const out = given.out ?? packageName(standard)
    try {
      writeFileSync(out, zip)
    } catch (error) {
      throw new InputProblem(`--out: ${out} cannot be written (${reason(error)}); give the name of a file`)
    }
    const { length } = parcel.lessons
    streams.out(
      `${out}: ${standard}, ${count(length, 'lesson')}, ${count(parcel.drills, 'drill')}, ${Math.ceil(zip.length / 1000)} kB`,
    )
    return 0
  },
}

function read(args: string[]) {
  try {
    const { values } = parseArgs({
      args,
      options: {
        standard: { type: 'string' },
        lessons: { type: 'string' },
        drills: { type: 'string', default: '0' },
        mastery: { type: 'string' },
        page: { type: 'string', default: join(folder, 'dist/tackstair.html') },
        out: { type: 'string' },
        help: { type: 'boolean', default: false },
      },
    })
    return values
  } catch (error) {
    throw new InputProblem(`package:lms: ${reason(error)}`)
  }
}

function standardIn(given: string | undefined): Standard {
  const standard = standards.find((each) => each === given)
  if (standard) return standard
  if (given === undefined) throw new InputProblem(`--standard is missing; allowed are ${standards.join(', ')}`)
  throw new InputProblem(`--standard: ${given} is none; allowed are ${standards.join(', ')}${meant(given, standards)}`)
}

function lessonsIn(given: string | undefined): readonly string[] {
  if (given === undefined) return course
  if (given === 'none') return []
  const ids = given.split(',').map((id) => id.trim())
  for (const [at, id] of ids.entries()) {
    if (!course.includes(id)) {
      throw new InputProblem(
        `--lessons: ${id || 'nothing'} is no lesson of the course; allowed are ${course.join(', ')}${meant(id, course)}`,
      )
    }
    if (ids.indexOf(id) !== at) throw new InputProblem(`--lessons: ${id} is there twice; give each lesson once`)
  }
  return ids
}

function drillsIn(given: string): number {
  const drills = Number(given)
  if (given.trim() !== '' && Number.isInteger(drills) && drills >= 0 && drills <= mostDrills) return drills
  throw new InputProblem(`--drills: ${given} is not allowed; allowed are whole numbers from 0 to ${mostDrills}`)
}

function masteryIn(given: string | undefined): number | null {
  if (given === undefined) return null
  const mastery = Number(given)
  if (given.trim() !== '' && mastery >= 0 && mastery <= 1) return Number(mastery.toFixed(4))
  throw new InputProblem(`--mastery: ${given} is not allowed; allowed are numbers from 0 to 1, such as 0.8`)
}

function page(file: string): string {
  if (!existsSync(file)) throw new InputProblem(`--page: ${file} is not there; make it by npm run build:file`)
  return readFileSync(file, 'utf8')
}

function titleOf(id: string): string {
  const text = readFileSync(join(folder, 'lessons', lessonFile(id)), 'utf8')
  return v.parse(lessonSchema, readSource(text).value).title
}

function say(key: keyof typeof learningSystem, values: Record<string, string | number>): string {
  return String(new IntlMessageFormat(learningSystem[key], 'en').format<string>(values))
}

function meant(given: string, names: readonly string[]): string {
  const near = closestOf(given, names)
  return near === 'none' ? '' : `; did you mean ${near}?`
}

function count(number: number, what: string): string {
  return `${number} ${what}${number === 1 ? '' : 's'}`
}

function reason(error: unknown): string {
  return (error instanceof Error ? error.message : String(error)).slice(0, 160).replaceAll(/\s+/g, ' ')
}
