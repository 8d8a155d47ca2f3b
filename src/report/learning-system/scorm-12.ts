/**
 * SCORM 1.2 (ADL, Run-Time Environment, 1 October 2001, chapter 3.4): names, vocabularies and limits of its data model.
 */
import type { Task } from './account.ts'
import type { Answered, Reply } from './answered.ts'
import type { Dialect, Pair } from './scorm.ts'
import { rankIn, rankOfNumber } from './scorm.ts'
import { decimal, timeOfDay, timespan } from './scorm-values.ts'
import type { Dispatch, Mode } from './system.ts'

/** Characters of a CMIString255, and of a CMIString4096, below which cmi.suspend_data stays. */
const longestString = 255
const roomForWork = 4095

/** CMIFeedback names each choice by one sign. */
const signs = 'abcdefghijklmnopqrstuvwxyz0123456789'

export const scorm12: Dialect = {
  apiName: 'API',
  hops: 7,
  calls: {
    begin: 'LMSInitialize',
    end: 'LMSFinish',
    get: 'LMSGetValue',
    set: 'LMSSetValue',
    commit: 'LMSCommit',
    error: 'LMSGetLastError',
  },
  room: roomForWork,
  // The standard names no least number; 250 is that of its successor.
  mostInteractions: 250,

  opened: (get) => {
    const suspended = get('cmi.suspend_data')
    const mastery = get('cmi.student_data.mastery_score')
    return {
      who: get('cmi.core.student_id'),
      learner: get('cmi.core.student_name'),
      mode: modeOf(get('cmi.core.lesson_mode')),
      suspended: suspended === '' ? null : suspended,
      mastery: mastery === '' || Number.isNaN(Number(mastery)) ? null : Number(mastery) / 100,
      languages: [],
      returnTo: null,
    }
  },

  rising: {
    'cmi.core.lesson_status': rankIn('not attempted', 'browsed', 'incomplete', 'failed', 'completed', 'passed'),
    'cmi.core.score.raw': rankOfNumber,
  },

  standing: ({ account }) => [
    ['cmi.core.lesson_status', statusOf(account.completed, account.passed)],
    ['cmi.core.score.min', '0'],
    ['cmi.core.score.max', '100'],
    ['cmi.core.score.raw', decimal(100 * account.score)],
    ...(account.bookmark === ''
      ? []
      : [['cmi.core.lesson_location', account.bookmark.slice(0, longestString)] as const]),
  ],

  suspended: ({ suspended }) => [['cmi.suspend_data', suspended]],

  objective: (at, task) => [
    [`cmi.objectives.${at}.id`, task.id.slice(0, longestString)],
    [`cmi.objectives.${at}.score.min`, '0'],
    [`cmi.objectives.${at}.score.max`, '100'],
    [`cmi.objectives.${at}.score.raw`, decimal(100 * task.score)],
    [`cmi.objectives.${at}.status`, taskStatus(task)],
  ],

  interaction: (at, { what, at: when, took }) => {
    if (what.kind !== 'answered') return null
    const { answered } = what
    const [type, right, given] = replyIn12(answered.reply)
    const name = `cmi.interactions.${at}`
    return [
      [`${name}.id`, answered.id.slice(0, longestString)],
      [`${name}.objectives.0.id`, answered.task.slice(0, longestString)],
      [`${name}.time`, timeOfDay(when)],
      [`${name}.type`, type],
      ...(right === null ? [] : [[`${name}.correct_responses.0.pattern`, right] as const]),
      [`${name}.student_response`, given],
      [`${name}.result`, resultOf(answered)],
      [`${name}.weighting`, answered.met === null ? '0' : '1'],
      [`${name}.latency`, timespan(took)],
    ]
  },

  visit: ({ seconds }: Dispatch): Pair[] => [
    ['cmi.core.session_time', timespan(seconds)],
    ['cmi.core.exit', 'suspend'],
  ],
}

function modeOf(mode: string): Mode {
  return mode === 'browse' || mode === 'review' ? mode : 'normal'
}

function statusOf(completed: boolean, passed: boolean | null): string {
  if (!completed) return 'incomplete'
  return passed === null ? 'completed' : passed ? 'passed' : 'failed'
}

function taskStatus({ begun, completed }: Task): string {
  return completed ? 'completed' : begun ? 'incomplete' : 'not attempted'
}

function resultOf({ met }: Answered): string {
  return met === null ? 'neutral' : met ? 'correct' : 'wrong'
}

/** Its type, the right response and the one given; numbers have no tolerance here, so the middle stands for the range. */
function replyIn12(reply: Reply): [type: string, right: string | null, given: string] {
  switch (reply.form) {
    case 'choice':
    case 'sequence': {
      const sign = (id: string) => signs.at(reply.choices.findIndex((choice) => choice.id === id)) ?? signs[0]
      const written = (ids: readonly string[]) => ids.map(sign).join(',')
      const type = reply.form === 'choice' ? 'choice' : 'sequencing'
      return [type, written(reply.right), written(reply.given)]
    }
    case 'number': {
      const { least, most, given } = reply
      return ['numeric', least === null || most === null ? null : decimal((least + most) / 2, 4), decimal(given, 4)]
    }
    case 'deed':
      return ['performance', null, reply.given.replaceAll(/[^A-Za-z0-9 .,-]/g, '').slice(0, longestString)]
  }
}
