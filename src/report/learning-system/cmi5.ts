/**
 * A cmi5 system: a learning record store, spoken with over the network. The visit's first statement is `initialized` and
 * its last `terminated`; the learner's work is kept in the store as a state document. An id that the store has is never
 * sent again in a visit, and where the store says that it has it already (409), that is an answer and no fault.
 */
import type { Cmi5Launch } from './cmi5-launch.ts'
import { parsedJson, readLanguages, readLaunchData } from './cmi5-launch.ts'
import type { Answer, StorePorts } from './record-store.ts'
import { RecordStore } from './record-store.ts'
import type { Defined, Setting, Standing, Statement } from './statements.ts'
import { definedStatement, entryStatement, verbs } from './statements.ts'
import type { Dispatch, LearningSystem, Mode, Opened, Sent } from './system.ts'

export interface Cmi5Ports extends StorePorts {
  readonly now: () => number
  readonly newId: () => string
}

/** Characters: what a browser still delivers once the page is closed. */
const roomForWork = 32_000
const workDocument = 'tackstair'

type Refusal = 'later' | 'closed'

export class Cmi5 implements LearningSystem {
  readonly room = roomForWork
  readonly who: string
  readonly #launch: Cmi5Launch
  readonly #ports: Cmi5Ports
  readonly #language: string
  readonly #store: RecordStore
  #hasToken = false
  #setting: Setting | null = null
  #mode: Mode = 'normal'
  /** statements as first built, so that a second try says the same */
  readonly #built = new Map<string, Statement>()
  readonly #own: Readonly<Record<'initialized' | 'failed' | 'terminated', string>>
  readonly #there = new Set<string>()
  readonly #onTheWay = new Set<string>()
  readonly #refused = new Set<string>()
  /** of the state document as last seen; null where there is none, undefined where the store does not say */
  #etag: string | null | undefined = undefined
  #suspended: string | null = null

  constructor(launch: Cmi5Launch, ports: Cmi5Ports, language: string) {
    this.#launch = launch
    this.#ports = ports
    this.#language = language
    this.#store = new RecordStore(launch.endpoint, ports)
    this.#own = { initialized: ports.newId(), failed: ports.newId(), terminated: ports.newId() }
    this.who = [JSON.stringify(launch.actor), launch.registration, launch.activityId].join(' ')
  }

  async open(): Promise<Opened | Refusal> {
    const token = this.#hasToken ? null : await this.#fetchToken()
    if (token !== null) return token
    const launchData = await this.#store.get('activities/state', this.#state('LMS.LaunchData'))
    const data = isTaken(launchData) ? readLaunchData(launchData.text) : null
    if (!data) return refusalOf(launchData)
    const preferences = await this.#store.get('agents/profile', {
      profileId: 'cmi5LearnerPreferences',
      agent: JSON.stringify(this.#launch.actor),
    })
    if (preferences.status === 0) return 'later'
    const suspended = await this.#readWork()
    if (suspended === 'later' || suspended === 'closed') return suspended
    this.#setting = { launch: this.#launch, data, language: this.#language, begun: this.#ports.now() }
    this.#mode = data.launchMode === 'Normal' ? 'normal' : data.launchMode === 'Browse' ? 'browse' : 'review'
    return {
      who: this.who,
      learner: typeof this.#launch.actor['name'] === 'string' ? this.#launch.actor['name'] : '',
      mode: this.#mode,
      suspended: suspended.text,
      mastery: data.masteryScore ?? null,
      languages: isTaken(preferences) ? readLanguages(preferences.text) : [],
      returnTo: data.returnURL ?? null,
    }
  }

  async send(dispatch: Dispatch): Promise<Sent> {
    const statements = this.#due(dispatch)
    const failed = await this.#deliver(statements)
    if (failed) return failed
    const kept = this.#mode === 'normal' ? await this.#keepWork(dispatch.suspended) : null
    return kept ?? { kind: 'taken', refused: [...this.#refused] }
  }

  close(dispatch: Dispatch): boolean {
    if (!this.#setting) return false
    const standing = standingOf(dispatch)
    const { completed, passed } = dispatch.account
    const isFailed = this.#mode === 'normal' && completed && passed === false && !('passed' in dispatch.once)
    const last = [
      ...(isFailed ? [this.#defined(this.#own.failed, 'failed', standing)] : []),
      this.#defined(this.#own.terminated, 'terminated', standing),
    ]
    const due = this.#due(dispatch).filter(({ id }) => !this.#onTheWay.has(id))
    // What is too much for a page that goes waits in the browser for the next visit.
    if (!this.#store.sendOff('POST', 'statements', {}, JSON.stringify([...due, ...last]))) {
      const first = due.filter(({ id }) => id === this.#own.initialized)
      this.#store.sendOff('POST', 'statements', {}, JSON.stringify([...first, ...last]))
    }
    if (this.#mode === 'normal') {
      this.#store.sendOff(
        'PUT',
        'activities/state',
        this.#state(workDocument),
        JSON.stringify({ work: dispatch.suspended }),
      )
    }
    return false
  }

  /** Everything the store does not have yet, in the order it has to come in. */
  #due(dispatch: Dispatch): Statement[] {
    const setting = this.#setting
    if (!setting) return []
    const { account, entries, once } = dispatch
    const standing = standingOf(dispatch)
    const first = this.#defined(this.#own.initialized, 'initialized', { ...standing, now: setting.begun })
    if (this.#mode !== 'normal') return [first].filter(({ id }) => !this.#there.has(id))
    const progress = account.completed ? null : account.progress
    const told = entries.map((entry) => this.#build(entry.id, () => entryStatement(entry, setting, progress)))
    const defined = (['completed', 'passed'] as const)
      .filter((verb) => verb in once)
      .map((verb) => this.#defined(once[verb], verb, standing))
    return [first, ...told, ...defined].filter(({ id }) => !this.#there.has(id))
  }

  #defined(id: string, verb: Defined, standing: Standing): Statement {
    const setting = this.#setting
    if (!setting) throw new Error('No statement can be made before the visit is open.')
    return this.#build(id, () => definedStatement(id, verb, setting, standing))
  }

  #build(id: string, make: () => Statement): Statement {
    let statement = this.#built.get(id)
    if (!statement) this.#built.set(id, (statement = make()))
    return statement
  }

  /** Null once all of them are there. A store that refuses the whole list is asked about each. */
  async #deliver(statements: readonly Statement[]): Promise<Sent | null> {
    if (statements.length === 0) return null
    for (const { id } of statements) this.#onTheWay.add(id)
    const outcome = await this.#store.send('POST', 'statements', {}, JSON.stringify(statements))
    for (const { id } of statements) this.#onTheWay.delete(id)
    if (isTaken(outcome)) {
      for (const { id } of statements) this.#there.add(id)
      return null
    }
    if (!isAboutOne(outcome)) return sentAs(outcome)
    if (statements.length > 1) {
      for (const statement of statements) {
        const failed = await this.#deliver([statement])
        if (failed) return failed
      }
      return null
    }
    const [{ id, verb }] = statements
    // That an answer is forbidden says that the visit is over; that a `completed` is, that there is one already.
    if (outcome.status === 403 && !isSaidOnce(verb)) return { kind: 'closed' }
    this.#there.add(id)
    if (outcome.status !== 409) this.#refused.add(id)
    return null
  }

  /** Null once the store keeps it. */
  async #keepWork(suspended: string): Promise<Sent | null> {
    if (suspended === this.#suspended) return null
    const condition: Record<string, string> =
      this.#etag === undefined ? {} : this.#etag === null ? { 'If-None-Match': '*' } : { 'If-Match': this.#etag }
    const body = JSON.stringify({ work: suspended })
    const outcome = await this.#store.send('PUT', 'activities/state', this.#state(workDocument), body, condition)
    if (isTaken(outcome)) {
      this.#suspended = suspended
      this.#etag = outcome.etag ?? undefined
      return null
    }
    if (outcome.status === 412 || outcome.status === 409) {
      // Another page of the same learner has kept something since.
      const now = await this.#readWork()
      if (now === 'later' || now === 'closed') return { kind: now }
      return { kind: 'overtaken', suspended: now.text }
    }
    return sentAs(outcome)
  }

  async #readWork(): Promise<{ text: string | null } | Refusal> {
    const outcome = await this.#store.get('activities/state', this.#state(workDocument))
    if (outcome.status === 404) {
      this.#etag = null
      return { text: null }
    }
    if (!isTaken(outcome)) return refusalOf(outcome)
    this.#etag = outcome.etag ?? undefined
    const kept = parsedJson(outcome.text) as { work?: unknown } | null | undefined
    return { text: typeof kept?.work === 'string' ? kept.work : null }
  }

  /** The address gives the token once; null once it is here. */
  async #fetchToken(): Promise<Refusal | null> {
    const outcome = await this.#store.request(this.#launch.fetch, { method: 'POST' })
    if (!isTaken(outcome)) return refusalOf(outcome)
    const given = parsedJson(outcome.text) as { 'auth-token'?: unknown } | null | undefined
    if (typeof given?.['auth-token'] !== 'string') return 'closed'
    this.#store.token = given['auth-token']
    this.#hasToken = true
    return null
  }

  #state(stateId: string): Record<string, string> {
    const { activityId, actor, registration } = this.#launch
    return { activityId, agent: JSON.stringify(actor), registration, stateId }
  }
}

function standingOf({ seconds, account, now }: Dispatch): Standing {
  return { seconds, score: account.score, now }
}

function isTaken(outcome: Answer): boolean {
  return outcome.status >= 200 && outcome.status < 300
}

/** The store says no to what was sent, and not to whoever sends. */
function isAboutOne(outcome: Answer): boolean {
  return [400, 403, 409, 413].includes(outcome.status)
}

function isSaidOnce(verb: Statement['verb']): boolean {
  return [verbs.completed, verbs.passed].some((id) => id === verb.id)
}

/** A store that is down, busy or not ready is asked again; one that knows the visit no longer is not. */
function refusalOf(outcome: Answer): Refusal {
  return [400, 401, 403].includes(outcome.status) ? 'closed' : 'later'
}

function sentAs(outcome: Answer): Sent {
  if (refusalOf(outcome) === 'closed') return { kind: 'closed' }
  const { wait } = outcome
  return wait === undefined ? { kind: 'later' } : { kind: 'later', wait }
}
