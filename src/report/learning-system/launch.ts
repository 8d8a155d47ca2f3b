/**
 * What a package asks of the page, as the part of its launch address after the question mark:
 *
 *   ?standard=scorm-1.2&lessons=tack,contamination&drills=3&mastery=0.8
 *
 * standard   how the learning system is spoken with; without it the page is the plain page
 * lessons    ids of lessons, in the order they are taken; all of the course where it is left out, `none` for none
 * drills     how many fault drills belong to it
 * mastery    share of 1 from which it counts as passed; no pass mark where it is left out
 *
 * A learning system may add words of its own (cmi5 does); they are left alone.
 */
export const standards = ['scorm-1.2', 'scorm-2004', 'cmi5'] as const
export type Standard = (typeof standards)[number]

/** What of the course a package holds. */
export interface Parcel {
  readonly lessons: readonly string[]
  readonly drills: number
  /** share of 1; null without a pass mark */
  readonly mastery: number | null
}

export interface Launch {
  readonly standard: Standard
  readonly parcel: Parcel
}

/** Chosen: an afternoon's worth; each is an objective of its own in the learning system. */
export const mostDrills = 20

const noLessons = 'none'

export function writeLaunch({ standard, parcel }: Launch): string {
  const { lessons, drills, mastery } = parcel
  const words = [
    `standard=${standard}`,
    `lessons=${lessons.length === 0 ? noLessons : lessons.join(',')}`,
    ...(drills === 0 ? [] : [`drills=${drills}`]),
    ...(mastery === null ? [] : [`mastery=${mastery}`]),
  ]
  return `?${words.join('&')}`
}

/** Null where the page was not launched by a package. What makes no sense is left out: a learner cannot mend it. */
export function readLaunch(search: string, course: readonly string[]): Launch | null {
  const given = new URLSearchParams(search)
  const standard = standards.find((each) => each === given.get('standard'))
  if (!standard) return null
  const named = given.get('lessons')
  const lessons =
    named === null ? course : named.split(',').filter((id, at, all) => isNew(id, at, all) && course.includes(id))
  const drills = Number(given.get('drills') ?? 0)
  const mastery = Number(given.get('mastery') ?? NaN)
  return {
    standard,
    parcel: {
      lessons,
      drills: Number.isInteger(drills) && drills >= 0 && drills <= mostDrills ? drills : 0,
      mastery: mastery >= 0 && mastery <= 1 ? mastery : null,
    },
  }
}

function isNew(id: string, at: number, all: readonly string[]): boolean {
  return all.indexOf(id) === at
}
