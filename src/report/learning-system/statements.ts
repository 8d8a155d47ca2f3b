/**
 * Statements as cmi5 1.0 (chapter 9) and xAPI 1.0.3 write them. A statement that is "cmi5 defined" carries the category of
 * that name; "cmi5 allowed" ones, such as an answer, carry the context template and no such category.
 */
import { extensionIds } from '../../session/statement-extensions.ts'
import type { Reply } from './answered.ts'
import type { Cmi5Launch, LaunchData } from './cmi5-launch.ts'
import { decimal, duration } from './scorm-values.ts'
import type { Entry } from './system.ts'

export interface Statement {
  readonly id: string
  readonly verb: { readonly id: string }
  readonly [field: string]: unknown
}

export interface Setting {
  readonly launch: Cmi5Launch
  readonly data: LaunchData
  /** a language tag: that of the course */
  readonly language: string
  /** ms since 1970: when the visit was initialized; no statement of it is older */
  readonly begun: number
}

const adl = 'http://adlnet.gov/expapi'
const cmi5 = 'https://w3id.org/xapi/cmi5'

export const verbs = {
  initialized: `${adl}/verbs/initialized`,
  completed: `${adl}/verbs/completed`,
  passed: `${adl}/verbs/passed`,
  failed: `${adl}/verbs/failed`,
  terminated: `${adl}/verbs/terminated`,
  answered: `${adl}/verbs/answered`,
} as const
export type Defined = Exclude<keyof typeof verbs, 'answered'>

const category = { cmi5: `${cmi5}/context/categories/cmi5`, moveOn: `${cmi5}/context/categories/moveon` }
const masteryExtension = `${cmi5}/context/extensions/masteryscore`
const progressExtension = `${cmi5}/result/extensions/progress`

export interface Standing {
  /** s of this visit */
  readonly seconds: number
  /** share of 1 */
  readonly score: number
  /** ms since 1970 */
  readonly now: number
}

/** One of the statements whose order cmi5 rules over; its object is the whole package. */
export function definedStatement(id: string, verb: Defined, setting: Setting, standing: Standing): Statement {
  const judges = verb === 'passed' || verb === 'failed'
  const isMoveOn = judges || verb === 'completed'
  const mastery = judges ? setting.data.masteryScore : undefined
  const result = {
    ...(verb === 'completed' ? { completion: true } : {}),
    ...(judges ? { success: verb === 'passed', score: scoreOf(standing.score) } : {}),
    ...(verb === 'initialized' ? {} : { duration: duration(standing.seconds) }),
  }
  return {
    ...said(id, verb, setting, standing.now),
    object: { objectType: 'Activity', id: setting.launch.activityId },
    ...(verb === 'initialized' ? {} : { result }),
    context: contextOf(setting, {
      category: [category.cmi5, ...(isMoveOn ? [category.moveOn] : [])],
      extensions: mastery === undefined ? {} : { [masteryExtension]: mastery },
    }),
  }
}

/** An answer, or a lesson or drill that is finished. `progress` as share of 1; null once all is done. */
export function entryStatement({ id, at, took, what }: Entry, setting: Setting, progress: number | null): Statement {
  const { activityId } = setting.launch
  const task = what.kind === 'answered' ? what.answered.task : what.task.id
  const more = what.kind === 'answered' ? what.answered.more : { context: {}, result: what.more ?? {} }
  const added = {
    ...(progress === null ? {} : { [progressExtension]: Math.floor(100 * progress) }),
    ...more?.result,
  }
  const extensions = Object.keys(added).length === 0 ? {} : { extensions: added }
  const result =
    what.kind === 'answered'
      ? {
          response: responseOf(what.answered.reply),
          ...(what.answered.met === null ? {} : { success: what.answered.met }),
          duration: duration(took),
          ...extensions,
        }
      : { completion: true, score: scoreOf(what.task.score), ...extensions }
  return {
    ...said(id, what.kind === 'answered' ? 'answered' : 'completed', setting, Math.max(at, setting.begun)),
    object:
      what.kind === 'answered'
        ? questionOf(activityId, what, setting.language)
        : taskOf(activityId, task, what.task.title, setting.language),
    result,
    context: contextOf(setting, {
      parent: what.kind === 'answered' ? [`${activityId}/${task}`] : [activityId],
      extensions: {
        ...(at < setting.begun ? { [extensionIds.givenAt]: new Date(at).toISOString() } : {}),
        ...more?.context,
      },
    }),
  }
}

function said(id: string, verb: keyof typeof verbs, { launch }: Setting, at: number) {
  return {
    id,
    actor: launch.actor,
    verb: { id: verbs[verb], display: { en: verb } },
    timestamp: new Date(at).toISOString(),
  }
}

interface Added {
  readonly category?: readonly string[]
  readonly parent?: readonly string[]
  readonly extensions: Readonly<Record<string, unknown>>
}

/** The system's template, whose values stay as they are, with ours beside them. */
function contextOf({ launch, data }: Setting, { category = [], parent = [], extensions }: Added) {
  const template = data.contextTemplate as {
    contextActivities?: Record<string, unknown>
    extensions?: Record<string, unknown>
  }
  const listed = (name: string, ids: readonly string[]) => {
    const before = template.contextActivities?.[name]
    const list = [...(Array.isArray(before) ? (before as unknown[]) : before === undefined ? [] : [before])]
    const all = [...list, ...ids.map((id) => ({ objectType: 'Activity', id }))]
    return all.length === 0 ? {} : { [name]: all }
  }
  return {
    ...template,
    registration: launch.registration,
    contextActivities: { ...template.contextActivities, ...listed('category', category), ...listed('parent', parent) },
    extensions: { ...extensions, ...template.extensions },
  }
}

function scoreOf(share: number) {
  return { scaled: Number(decimal(share, 4)), raw: Math.round(100 * share), min: 0, max: 100 }
}

function taskOf(activityId: string, task: string, title: string, language: string) {
  return {
    objectType: 'Activity',
    id: `${activityId}/${task}`,
    definition: { type: `${adl}/activities/objective`, name: { [language]: title } },
  }
}

/** xAPI 1.0.3, part two, appendix C: interactions. */
function questionOf(activityId: string, { answered }: Extract<Entry['what'], { kind: 'answered' }>, language: string) {
  const { id, asks, reply } = answered
  const choices = () =>
    reply.form === 'choice' || reply.form === 'sequence'
      ? { choices: reply.choices.map((choice) => ({ id: choice.id, description: { [language]: choice.text } })) }
      : {}
  const right = patternOf(reply)
  return {
    objectType: 'Activity',
    id: `${activityId}/${id}`,
    definition: {
      type: `${adl}/activities/cmi.interaction`,
      description: { [language]: asks },
      interactionType: typeOf(reply),
      ...(right === null ? {} : { correctResponsesPattern: [right] }),
      ...choices(),
    },
  }
}

function typeOf({ form }: Reply): string {
  return { choice: 'choice', sequence: 'sequencing', number: 'numeric', deed: 'other' }[form]
}

function patternOf(reply: Reply): string | null {
  switch (reply.form) {
    case 'choice':
    case 'sequence':
      return reply.right.join('[,]')
    case 'number':
      return reply.least === null || reply.most === null
        ? null
        : `${decimal(reply.least, 4)}[:]${decimal(reply.most, 4)}`
    case 'deed':
      return null
  }
}

function responseOf(reply: Reply): string {
  switch (reply.form) {
    case 'choice':
    case 'sequence':
      return reply.given.join('[,]')
    case 'number':
      return decimal(reply.given, 4)
    case 'deed':
      return reply.given
  }
}
