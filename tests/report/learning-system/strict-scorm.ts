/**
 * A SCORM system that keeps to the letter, from the published tables: SCORM 1.2 Run-Time Environment (ADL, 2001) 3.4.4, and
 * SCORM 2004 4th edition Run-Time Environment (ADL, 2009) chapter 4, with the smallest lengths that a system must hold
 * taken as the largest that it does. It refuses, and notes, every value that is too long, of the wrong form, out of the
 * vocabulary, out of turn, or said after the end. Its commits can be made to fail.
 */
export type Edition = '1.2' | '2004'

interface Rule {
  /** the element, with n for any number */
  readonly element: RegExp
  readonly allowed: RegExp | ((value: string, strict: StrictScorm, element: string) => boolean)
}

const decimal = /^-?\d+(\.\d+)?$/
const from0To100 = (value: string) => decimal.test(value) && Number(value) >= 0 && Number(value) <= 100
const from0To1 = (value: string) => decimal.test(value) && Number(value) >= 0 && Number(value) <= 1
const scaled = (value: string) => decimal.test(value) && Number(value) >= -1 && Number(value) <= 1
const upTo = (most: number) => (value: string) => value.length <= most

const identifier12 = /^[A-Za-z0-9_-]{1,255}$/
const timespan12 = /^\d{2,4}:[0-5]\d:[0-5]\d(\.\d{1,2})?$/
const status12 = /^(passed|completed|failed|incomplete|browsed|not attempted)$/
const feedback12: Readonly<Record<string, RegExp>> = {
  choice: /^[a-z0-9](,[a-z0-9])*$/,
  sequencing: /^[a-z0-9](,[a-z0-9])*$/,
  numeric: decimal,
  performance: /^[\x20-\x7e]{0,255}$/,
  'fill-in': /^[\x20-\x7e]{0,255}$/,
}

const rules12: readonly Rule[] = [
  { element: /^cmi\.core\.lesson_location$/, allowed: upTo(255) },
  { element: /^cmi\.core\.lesson_status$/, allowed: status12 },
  { element: /^cmi\.core\.score\.(raw|min|max)$/, allowed: from0To100 },
  { element: /^cmi\.core\.exit$/, allowed: /^(time-out|suspend|logout|)$/ },
  { element: /^cmi\.core\.session_time$/, allowed: timespan12 },
  { element: /^cmi\.suspend_data$/, allowed: (value) => value.length < 4096 && /^[\x20-\x7e]*$/.test(value) },
  { element: /^cmi\.objectives\.\d+\.id$/, allowed: identifier12 },
  { element: /^cmi\.objectives\.\d+\.score\.(raw|min|max)$/, allowed: from0To100 },
  { element: /^cmi\.objectives\.\d+\.status$/, allowed: status12 },
  { element: /^cmi\.interactions\.\d+\.(objectives\.\d+\.)?id$/, allowed: identifier12 },
  { element: /^cmi\.interactions\.\d+\.time$/, allowed: /^([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,2})?$/ },
  {
    element: /^cmi\.interactions\.\d+\.type$/,
    allowed: /^(true-false|choice|fill-in|matching|performance|sequencing|likert|numeric)$/,
  },
  {
    element: /^cmi\.interactions\.\d+\.(correct_responses\.\d+\.pattern|student_response)$/,
    allowed: ofItsType(feedback12),
  },
  { element: /^cmi\.interactions\.\d+\.weighting$/, allowed: decimal },
  { element: /^cmi\.interactions\.\d+\.result$/, allowed: /^(correct|wrong|unanticipated|neutral|-?\d+(\.\d+)?)$/ },
  { element: /^cmi\.interactions\.\d+\.latency$/, allowed: timespan12 },
]

const shortId = '[A-Za-z0-9_-]{1,250}'
const response2004: Readonly<Record<string, RegExp>> = {
  choice: new RegExp(`^(${shortId}(\\[,\\]${shortId}){0,35})?$`),
  sequencing: new RegExp(`^(${shortId}(\\[,\\]${shortId}){0,35})?$`),
  numeric: decimal,
  other: /^[^]{0,4000}$/,
  'fill-in': /^[^]{0,250}$/,
}
const pattern2004 = { ...response2004, numeric: /^(-?\d+(\.\d+)?)?\[:\](-?\d+(\.\d+)?)?$/ }
const interval2004 = /^PT(?=\d)(\d+H)?(\d+M)?(\d+(\.\d{1,2})?S)?$/
const completion2004 = /^(completed|incomplete|not attempted|unknown)$/

const rules2004: readonly Rule[] = [
  { element: /^cmi\.completion_status$/, allowed: completion2004 },
  { element: /^cmi\.success_status$/, allowed: /^(passed|failed|unknown)$/ },
  { element: /^cmi\.progress_measure$/, allowed: from0To1 },
  { element: /^cmi\.score\.scaled$/, allowed: scaled },
  { element: /^cmi\.score\.(raw|min|max)$/, allowed: decimal },
  { element: /^cmi\.location$/, allowed: upTo(1000) },
  { element: /^cmi\.suspend_data$/, allowed: upTo(64_000) },
  { element: /^cmi\.session_time$/, allowed: interval2004 },
  { element: /^cmi\.exit$/, allowed: /^(timeout|suspend|logout|normal|)$/ },
  { element: /^cmi\.objectives\.\d{1,2}\.id$/, allowed: isNewId },
  { element: /^cmi\.objectives\.\d{1,2}\.description$/, allowed: upTo(250) },
  { element: /^cmi\.objectives\.\d{1,2}\.completion_status$/, allowed: completion2004 },
  { element: /^cmi\.objectives\.\d{1,2}\.success_status$/, allowed: /^(passed|failed|unknown)$/ },
  { element: /^cmi\.objectives\.\d{1,2}\.progress_measure$/, allowed: from0To1 },
  { element: /^cmi\.objectives\.\d{1,2}\.score\.scaled$/, allowed: scaled },
  { element: /^cmi\.objectives\.\d{1,2}\.score\.(raw|min|max)$/, allowed: decimal },
  { element: /^cmi\.interactions\.([01]?\d?\d|2[0-4]\d)\.id$/, allowed: /^[A-Za-z0-9_-]{1,4000}$/ },
  { element: /^cmi\.interactions\.\d+\.objectives\.\d+\.id$/, allowed: /^[A-Za-z0-9_-]{1,4000}$/ },
  {
    element: /^cmi\.interactions\.\d+\.type$/,
    allowed: /^(true-false|choice|fill-in|long-fill-in|matching|performance|sequencing|likert|numeric|other)$/,
  },
  {
    element: /^cmi\.interactions\.\d+\.timestamp$/,
    allowed: /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,2}(Z|[+-]\d\d(:\d\d)?)?)?$/,
  },
  { element: /^cmi\.interactions\.\d+\.description$/, allowed: upTo(250) },
  { element: /^cmi\.interactions\.\d+\.correct_responses\.\d+\.pattern$/, allowed: ofItsType(pattern2004) },
  { element: /^cmi\.interactions\.\d+\.learner_response$/, allowed: ofItsType(response2004) },
  { element: /^cmi\.interactions\.\d+\.weighting$/, allowed: decimal },
  { element: /^cmi\.interactions\.\d+\.result$/, allowed: /^(correct|incorrect|unanticipated|neutral|-?\d+(\.\d+)?)$/ },
  { element: /^cmi\.interactions\.\d+\.latency$/, allowed: interval2004 },
]

function ofItsType(forms: Readonly<Record<string, RegExp>>) {
  return (value: string, strict: StrictScorm, element: string) => {
    const type = strict.data.get(`${element.split('.').slice(0, 3).join('.')}.type`) ?? ''
    return Object.hasOwn(forms, type) && forms[type].test(value)
  }
}

function isNewId(value: string, { data }: StrictScorm, element: string): boolean {
  const ids = [...data].filter(([key]) => /^cmi\.objectives\.\d+\.id$/.test(key) && key !== element)
  return /^[A-Za-z0-9_-]{1,4000}$/.test(value) && !ids.some(([, id]) => id === value)
}

const names = {
  '1.2': ['LMSInitialize', 'LMSFinish', 'LMSGetValue', 'LMSSetValue', 'LMSCommit', 'LMSGetLastError'],
  '2004': ['Initialize', 'Terminate', 'GetValue', 'SetValue', 'Commit', 'GetLastError'],
} as const

export class StrictScorm {
  readonly edition: Edition
  /** everything set in this attempt */
  readonly data: Map<string, string>
  /** what has been committed, which is all that a next visit knows */
  committed: Map<string, string>
  readonly problems: string[] = []
  commits = 0
  /** how many of the next commits fail */
  failing = 0
  state: 'before' | 'open' | 'over' = 'before'
  #code = '0'

  constructor(edition: Edition, before = new Map<string, string>()) {
    this.edition = edition
    this.committed = new Map(before)
    this.data = new Map(before)
  }

  /** The object that a page finds in its parent window. */
  get api(): Record<string, unknown> {
    const [begin, end, get, set, commit, error] = names[this.edition]
    return {
      [begin]: () => this.#begin(),
      [end]: () => this.#end(),
      [get]: (element: string) => this.#get(element),
      [set]: (element: string, value: string) => this.#set(element, value),
      [commit]: () => this.#commit(),
      [error]: () => this.#code,
    }
  }

  /** The next visit of the same attempt. */
  next(): StrictScorm {
    return new StrictScorm(this.edition, this.committed)
  }

  interactions(): Record<string, string>[] {
    return this.#records('cmi.interactions')
  }

  objectives(): Record<string, string>[] {
    return this.#records('cmi.objectives')
  }

  #records(name: string): Record<string, string>[] {
    const count = this.#count(name, this.committed)
    return Array.from({ length: count }, (_, at) => {
      const start = `${name}.${at}.`
      const fields = [...this.committed].filter(([key]) => key.startsWith(start))
      return Object.fromEntries(fields.map(([key, value]) => [key.slice(start.length), value]))
    })
  }

  #begin(): string {
    if (this.state === 'open') return this.#refuse(this.edition === '1.2' ? '101' : '103', 'begun twice')
    if (this.state === 'over') return this.#refuse(this.edition === '1.2' ? '101' : '104', 'begun after the end')
    this.state = 'open'
    return this.#answer('true')
  }

  #end(): string {
    if (this.state !== 'open') return this.#refuse(this.edition === '1.2' ? '301' : '113', 'ended while not open')
    this.state = 'over'
    return this.#answer('true')
  }

  #get(element: string): string {
    if (this.state !== 'open') {
      this.#refuse(this.edition === '1.2' ? '301' : '123', `${element} asked for while not open`)
      return ''
    }
    const count = /^(cmi\.\w+)\._count$/.exec(element)
    const isLearner = element === 'cmi.core.student_id' || element === 'cmi.learner_id'
    return this.#answer(count ? String(this.#count(count[1])) : (this.data.get(element) ?? (isLearner ? 'a-17' : '')))
  }

  #set(element: string, value: string): string {
    if (this.state !== 'open')
      return this.#refuse(this.edition === '1.2' ? '301' : '133', `${element} set while not open`)
    const rule = (this.edition === '1.2' ? rules12 : rules2004).find((each) => each.element.test(element))
    if (!rule) return this.#refuse('401', `${element} is no element to be set`)
    const [, list = '', at = '', field = ''] = /^(cmi\.(?:objectives|interactions))\.(\d+)\.(.*)$/.exec(element) ?? []
    if (list !== '' && Number(at) > this.#count(list)) return this.#refuse('201', `${element} leaves a gap`)
    if (list !== '' && Number(at) === this.#count(list) && field !== 'id') {
      return this.#refuse('201', `${element} is set before the id`)
    }
    const { allowed } = rule
    const isAllowed = allowed instanceof RegExp ? allowed.test(value) : allowed(value, this, element)
    if (!isAllowed) return this.#refuse('405', `${element} may not be "${value.slice(0, 80)}"`)
    this.data.set(element, value)
    return this.#answer('true')
  }

  #commit(): string {
    if (this.state !== 'open') return this.#refuse(this.edition === '1.2' ? '301' : '143', 'committed while not open')
    if (this.failing > 0) {
      this.failing--
      this.#code = this.edition === '1.2' ? '101' : '391'
      return 'false'
    }
    this.commits++
    this.committed = new Map(this.data)
    return this.#answer('true')
  }

  #count(list: string, data = this.data): number {
    return [...data.keys()].filter((key) => new RegExp(`^${list}\\.\\d+\\.id$`).test(key)).length
  }

  #answer(text: string): string {
    this.#code = '0'
    return text
  }

  #refuse(code: string, problem: string): string {
    this.#code = code
    this.problems.push(problem)
    return 'false'
  }
}
