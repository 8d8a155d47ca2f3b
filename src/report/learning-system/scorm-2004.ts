/**
 * SCORM 2004 4th edition (ADL, Run-Time Environment 1.1, 2009, chapter 4): names, vocabularies and the smallest lengths
 * ("SPM") that every system has to hold.
 */
import type { Task } from './account.ts'
import type { Answered, Reply } from './answered.ts'
import type { Dialect, Pair } from './scorm.ts'
import { rankIn, rankOfNumber } from './scorm.ts'
import { decimal, duration, moment } from './scorm-values.ts'
import type { Dispatch, Mode } from './system.ts'

const roomForWork = 64_000
const longestDescription = 250
const longestLocation = 1000
const longestText = 250

const rankOfSuccess = rankIn('unknown', 'failed', 'passed')

export const scorm2004: Dialect = {
  apiName: 'API_1484_11',
  hops: 500,
  calls: {
    begin: 'Initialize',
    end: 'Terminate',
    get: 'GetValue',
    set: 'SetValue',
    commit: 'Commit',
    error: 'GetLastError',
  },
  room: roomForWork,
  mostInteractions: 250,

  opened: (get) => {
    const suspended = get('cmi.suspend_data')
    const mastery = get('cmi.scaled_passing_score')
    const language = get('cmi.learner_preference.language')
    return {
      who: get('cmi.learner_id'),
      learner: get('cmi.learner_name'),
      mode: modeOf(get('cmi.mode')),
      suspended: suspended === '' ? null : suspended,
      mastery: mastery === '' || Number.isNaN(Number(mastery)) ? null : Number(mastery),
      languages: language === '' ? [] : [language],
      returnTo: null,
    }
  },

  rising: {
    'cmi.completion_status': rankIn('not attempted', 'incomplete', 'completed'),
    'cmi.success_status': rankOfSuccess,
    'cmi.objectives.n.success_status': rankOfSuccess,
    'cmi.progress_measure': rankOfNumber,
    'cmi.score.scaled': rankOfNumber,
    'cmi.score.raw': rankOfNumber,
  },

  standing: ({ account }) => [
    ['cmi.completion_status', account.completed ? 'completed' : 'incomplete'],
    ['cmi.success_status', successOf(account.passed)],
    ['cmi.progress_measure', decimal(account.progress, 4)],
    ['cmi.score.scaled', decimal(account.score, 4)],
    ['cmi.score.min', '0'],
    ['cmi.score.max', '100'],
    ['cmi.score.raw', decimal(100 * account.score)],
    ...(account.bookmark === '' ? [] : [['cmi.location', account.bookmark.slice(0, longestLocation)] as const]),
  ],

  suspended: ({ suspended }) => [['cmi.suspend_data', suspended]],

  objective: (at, task) => [
    [`cmi.objectives.${at}.id`, task.id],
    [`cmi.objectives.${at}.description`, task.title.slice(0, longestDescription)],
    [`cmi.objectives.${at}.completion_status`, taskStatus(task)],
    [`cmi.objectives.${at}.success_status`, successOf(task.passed)],
    [`cmi.objectives.${at}.progress_measure`, decimal(task.progress, 4)],
    [`cmi.objectives.${at}.score.scaled`, decimal(task.score, 4)],
    [`cmi.objectives.${at}.score.min`, '0'],
    [`cmi.objectives.${at}.score.max`, '100'],
    [`cmi.objectives.${at}.score.raw`, decimal(100 * task.score)],
  ],

  interaction: (at, { what, at: when, took }) => {
    if (what.kind !== 'answered') return null
    const { answered } = what
    const [type, right, given] = replyIn2004(answered.reply)
    const name = `cmi.interactions.${at}`
    return [
      [`${name}.id`, answered.id],
      [`${name}.type`, type],
      [`${name}.objectives.0.id`, answered.task],
      [`${name}.timestamp`, moment(when)],
      [`${name}.description`, answered.asks.slice(0, longestDescription)],
      ...(right === null ? [] : [[`${name}.correct_responses.0.pattern`, right] as const]),
      [`${name}.learner_response`, given],
      [`${name}.result`, resultOf(answered)],
      [`${name}.weighting`, answered.met === null ? '0' : '1'],
      [`${name}.latency`, duration(took)],
    ]
  },

  visit: ({ seconds }: Dispatch): Pair[] => [
    ['cmi.session_time', duration(seconds)],
    ['cmi.exit', 'suspend'],
  ],
}

function modeOf(mode: string): Mode {
  return mode === 'browse' || mode === 'review' ? mode : 'normal'
}

function successOf(passed: boolean | null): string {
  return passed === null ? 'unknown' : passed ? 'passed' : 'failed'
}

function taskStatus({ begun, completed }: Task): string {
  return completed ? 'completed' : begun ? 'incomplete' : 'not attempted'
}

function resultOf({ met }: Answered): string {
  return met === null ? 'neutral' : met ? 'correct' : 'incorrect'
}

function replyIn2004(reply: Reply): [type: string, right: string | null, given: string] {
  switch (reply.form) {
    case 'choice':
      return ['choice', reply.right.join('[,]'), reply.given.join('[,]')]
    case 'sequence':
      return ['sequencing', reply.right.join('[,]'), reply.given.join('[,]')]
    case 'number': {
      const { least, most, given } = reply
      const right = least === null || most === null ? null : `${decimal(least, 4)}[:]${decimal(most, 4)}`
      return ['numeric', right, decimal(given, 4)]
    }
    case 'deed':
      return ['other', null, reply.given.slice(0, longestText)]
  }
}
