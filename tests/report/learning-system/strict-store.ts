/**
 * A learning record store with its learning system, which keeps to the letter of cmi5 1.0: launch data before the launch, one
 * token for each visit, `initialized` first and `terminated` last by their times, one `completed` and one `passed` for each
 * registration, the context template in every statement, ids that are never taken twice, state documents with their ETag.
 * Whatever breaks a rule is refused and noted. It can be made to fail in the ways that networks and servers do.
 */
import { createHash } from 'node:crypto'

export interface StoredStatement {
  id: string
  actor: unknown
  verb: { id: string }
  object: { id: string; definition?: Record<string, unknown> }
  result?: Record<string, unknown>
  context: {
    registration: string
    contextActivities: Record<string, { id: string }[] | undefined>
    extensions: Record<string, unknown>
  }
  timestamp: string
}

export interface StoreRequest {
  readonly method: string
  /** path and query below the endpoint, or `fetch` */
  readonly address: URL
  readonly headers: Readonly<Record<string, string | undefined>>
  readonly body: string
}

export interface StoreAnswer {
  readonly status: number
  readonly body: string
  readonly headers: Readonly<Record<string, string>>
}

/** What the next requests meet: `lost` does what is asked and its answer never arrives. */
export type Fault = 'down' | 'lost' | 'slow' | 401 | 403 | 409 | 412 | 429 | 500 | 503

const adl = 'http://adlnet.gov/expapi/verbs/'
const cmi5Category = 'https://w3id.org/xapi/cmi5/context/categories/cmi5'
const moveOnCategory = 'https://w3id.org/xapi/cmi5/context/categories/moveon'
const sessionKey = 'https://w3id.org/xapi/cmi5/context/extensions/sessionid'
const masteryKey = 'https://w3id.org/xapi/cmi5/context/extensions/masteryscore'
const uuid = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/

export interface LaunchWish {
  readonly launchMode?: 'Normal' | 'Browse' | 'Review'
  readonly masteryScore?: number
  readonly returnURL?: string
}

interface Session {
  readonly id: string
  readonly token: string
  fetched: boolean
  /** the system no longer takes anything of it, as once it counts as abandoned */
  closed: boolean
  /** its launch data, as the context template asks for */
  readonly data: Record<string, unknown>
}

export class StrictStore {
  readonly registration = '760e3480-ba55-4991-94b0-01820dbd23a2'
  readonly activityId = 'https://lms.example/activity/17'
  readonly actor = { objectType: 'Agent', account: { homePage: 'https://lms.example', name: '1625378' } }
  readonly statements: StoredStatement[] = []
  readonly problems: string[] = []
  readonly requests: string[] = []
  readonly documents = new Map<string, string>()
  preferences: string | null = null
  /** taken from the front by the requests that match, the first first */
  faults: { readonly on: RegExp; readonly fault: Fault }[] = []
  readonly #sessions: Session[] = []

  /** Launches the page for another visit: what stands after the question mark of its address. */
  launch(endpoint: string, fetch: string, wish: LaunchWish = {}): string {
    for (const session of this.#sessions) session.closed = true
    const number = this.#sessions.length + 1
    const id = `session-${number}`
    const data = {
      contextTemplate: {
        contextActivities: { grouping: [{ objectType: 'Activity', id: 'urn:uuid:publisher' }] },
        extensions: { [sessionKey]: id },
      },
      launchMode: wish.launchMode ?? 'Normal',
      moveOn: 'CompletedAndPassed',
      ...(wish.masteryScore === undefined ? {} : { masteryScore: wish.masteryScore }),
      ...(wish.returnURL === undefined ? {} : { returnURL: wish.returnURL }),
    }
    this.#sessions.push({ id, token: `token-${number}`, fetched: false, closed: false, data })
    const words = new URLSearchParams({
      endpoint,
      fetch: `${fetch}?session=${number}`,
      actor: JSON.stringify(this.actor),
      registration: this.registration,
      activityId: this.activityId,
    })
    return words.toString()
  }

  /** The statements of a visit, from 1, in the order of their times. */
  visit(number: number): StoredStatement[] {
    const own = this.statements.filter(({ context }) => context.extensions[sessionKey] === `session-${number}`)
    return own.toSorted((one, other) => one.timestamp.localeCompare(other.timestamp))
  }

  verbs(number: number): string[] {
    return this.visit(number).map(({ verb }) => verb.id.replace(adl, ''))
  }

  /** What the next request meets instead of an answer. */
  faultFor(request: StoreRequest): Fault | null {
    const line = `${request.method} ${request.address.pathname}${request.address.search}`
    const at = this.faults.findIndex(({ on }) => on.test(line))
    return at < 0 ? null : this.faults.splice(at, 1)[0].fault
  }

  answer(request: StoreRequest): StoreAnswer {
    const { method, address } = request
    this.requests.push(`${method} ${address.pathname}`)
    if (address.pathname.endsWith('/fetch')) return this.#token(request)
    const session = this.#sessions.find(({ token }) => request.headers['authorization'] === `Basic ${token}`)
    if (!session?.fetched) return this.#refuse(401, `${method} ${address.pathname} without a token`)
    if (request.headers['x-experience-api-version'] !== '1.0.3') return this.#refuse(400, 'no version of xAPI')
    if (address.pathname.endsWith('/statements')) return this.#take(request, session)
    if (address.pathname.endsWith('/activities/state')) return this.#state(request, session)
    if (address.pathname.endsWith('/agents/profile') && method === 'GET') {
      return this.preferences === null ? answerOf(404) : answerOf(200, this.preferences)
    }
    return this.#refuse(404, `${method} ${address.pathname}`)
  }

  #token({ method, address }: StoreRequest): StoreAnswer {
    const session = this.#sessions.at(Number(address.searchParams.get('session')) - 1)
    if (method !== 'POST' || !session) return this.#refuse(405, 'the token is not asked for by POST')
    if (session.fetched) return answerOf(200, JSON.stringify({ 'error-code': '1', 'error-text': 'Already in use.' }))
    session.fetched = true
    return answerOf(200, JSON.stringify({ 'auth-token': session.token }))
  }

  #take({ method, body }: StoreRequest, session: Session): StoreAnswer {
    if (method !== 'POST') return this.#refuse(405, `${method} statements`)
    const given = JSON.parse(body) as StoredStatement[]
    const known = given.filter(({ id }) => this.statements.some((each) => each.id === id))
    if (known.some((each) => !this.#isSame(each))) return answerOf(409)
    if (known.length > 0 && known.length < given.length) return answerOf(409)
    if (session.closed) return answerOf(403)
    for (const statement of given) {
      if (known.includes(statement)) continue
      const problem = this.#problemOf(statement, session)
      if (problem !== null) return this.#refuse(problem.status, problem.said)
      this.statements.push(statement)
    }
    return answerOf(200, JSON.stringify(given.map(({ id }) => id)))
  }

  #isSame(statement: StoredStatement): boolean {
    const stored = this.statements.find(({ id }) => id === statement.id)
    return JSON.stringify(stored) === JSON.stringify(statement)
  }

  #problemOf(statement: StoredStatement, session: Session): { status: number; said: string } | null {
    const verb = statement.verb.id.replace(adl, '')
    const { context } = statement
    const categories = (context.contextActivities['category'] ?? []).map(({ id }) => id)
    const isDefined = categories.includes(cmi5Category)
    const before = this.statements.filter((each) => each.context.extensions[sessionKey] === session.id)
    const verbsBefore = before.map((each) => each.verb.id.replace(adl, ''))
    const ofRegistration = this.statements.filter(isDefinedOne).map((each) => each.verb.id.replace(adl, ''))
    const refuse = (said: string, status = 400) => ({ status, said: `${verb}: ${said}` })
    if (!uuid.test(statement.id)) return refuse(`the id is no UUID: ${statement.id}`)
    if (!statement.timestamp.endsWith('Z')) return refuse('the time is not in UTC')
    if (JSON.stringify(statement.actor) !== JSON.stringify(this.actor)) return refuse('the actor is another')
    if (context.registration !== this.registration) return refuse('the registration is another')
    if (context.extensions[sessionKey] !== session.id) return refuse('the session is another')
    if (!(context.contextActivities['grouping'] ?? []).some(({ id }) => id === 'urn:uuid:publisher')) {
      return refuse('the context template is not kept')
    }
    if (before.length === 0 && verb !== 'initialized') return refuse('it is not initialized first')
    if (verbsBefore.includes('terminated')) return refuse('it comes after the end')
    if (
      before.some(({ timestamp }) => timestamp > statement.timestamp) &&
      (verb === 'terminated' || verb === 'initialized')
    ) {
      return refuse('its time is out of order')
    }
    const first = before.at(0)
    if (first && statement.timestamp < first.timestamp) return refuse('its time is before the first')
    if (!isDefined) {
      if (['initialized', 'terminated', 'passed', 'failed'].includes(verb)) return refuse('it needs the category cmi5')
      if (categories.includes(moveOnCategory)) return refuse('it may not carry the category moveon')
      if (session.data['launchMode'] !== 'Normal') return refuse('nothing counts in this mode')
      return null
    }
    if (statement.object.id !== this.activityId) return refuse('the object is another')
    if (verbsBefore.includes(verb) && before.some((each) => isDefinedOne(each) && each.verb.id === statement.verb.id)) {
      return refuse('it is said twice in a session', 403)
    }
    if (session.data['launchMode'] !== 'Normal' && verb !== 'initialized' && verb !== 'terminated') {
      return refuse('nothing counts in this mode')
    }
    if (['completed', 'passed'].includes(verb) && ofRegistration.includes(verb)) return refuse('it is said twice', 403)
    if (verb === 'failed' && ofRegistration.includes('passed')) return refuse('it follows passed')
    if (['passed', 'failed'].includes(verb) && before.filter(isDefinedOne).some(isJudged)) return refuse('judged twice')
    if (verb !== 'initialized' && !/^PT/.test(String(statement.result?.['duration'])))
      return refuse('it has no duration')
    if (['completed', 'passed', 'failed'].includes(verb) !== categories.includes(moveOnCategory)) {
      return refuse('the category moveon is missing, or there without need')
    }
    const { masteryScore } = session.data as { masteryScore?: number }
    if (['passed', 'failed'].includes(verb)) {
      const { scaled } = (statement.result?.['score'] ?? {}) as { scaled?: number }
      if (statement.result?.['success'] !== (verb === 'passed')) return refuse('success is wrong')
      if (masteryScore !== undefined && context.extensions[masteryKey] !== masteryScore)
        return refuse('the pass mark is missing')
      if (masteryScore !== undefined && scaled !== undefined && scaled >= masteryScore !== (verb === 'passed')) {
        return refuse('it does not fit the pass mark')
      }
    } else if (statement.result && 'score' in statement.result) return refuse('a score is not allowed')
    if (verb === 'completed' && statement.result?.['completion'] !== true) return refuse('completion is missing')
    return null
  }

  #state({ method, address, body, headers }: StoreRequest, session: Session): StoreAnswer {
    const query = Object.fromEntries(address.searchParams)
    const { activityId, agent, registration, stateId } = query
    if (activityId !== this.activityId || registration !== this.registration || agent !== JSON.stringify(this.actor)) {
      return this.#refuse(400, 'the state is of somebody else')
    }
    if (stateId === 'LMS.LaunchData') {
      return method === 'GET'
        ? answerOf(200, JSON.stringify(session.data))
        : this.#refuse(403, 'the launch data was changed')
    }
    const now = this.documents.get(stateId)
    const etag = now === undefined ? null : `"${createHash('sha1').update(now).digest('hex')}"`
    if (method === 'GET') return now === undefined ? answerOf(404) : answerOf(200, now, { ETag: etag ?? '' })
    if (method !== 'PUT') return this.#refuse(405, `${method} state`)
    if (session.closed) return answerOf(403)
    if (headers['if-none-match'] === '*' && etag !== null) return answerOf(412)
    if (headers['if-match'] !== undefined && headers['if-match'] !== etag) return answerOf(412)
    this.documents.set(stateId, body)
    return answerOf(204, '', { ETag: `"${createHash('sha1').update(body).digest('hex')}"` })
  }

  #refuse(status: number, problem: string): StoreAnswer {
    this.problems.push(problem)
    return answerOf(status)
  }
}

function isDefinedOne({ context }: StoredStatement): boolean {
  return (context.contextActivities['category'] ?? []).some(({ id }) => id === cmi5Category)
}

function isJudged({ verb }: StoredStatement): boolean {
  return verb.id.endsWith('/passed') || verb.id.endsWith('/failed')
}

function answerOf(status: number, body = '', headers: Readonly<Record<string, string>> = {}): StoreAnswer {
  return { status, body, headers }
}

/** The store as a page without a network sees it: every request is answered at once, or meets its fault. */
export function fetchFrom(store: StrictStore): (address: string, request: RequestInit) => Promise<Response> {
  return (address, { method = 'GET', headers = {}, body = '', signal }) => {
    const lower = Object.entries(headers as Record<string, string>).map(([name, value]) => [name.toLowerCase(), value])
    const request: StoreRequest = {
      method,
      address: new URL(address),
      headers: Object.fromEntries(lower) as Record<string, string>,
      body: typeof body === 'string' ? body : '',
    }
    const fault = store.faultFor(request)
    if (fault === 'down') return Promise.reject(new TypeError('Failed to fetch'))
    if (fault === 'slow') {
      return new Promise((_, reject) => {
        signal?.addEventListener('abort', () => reject(new DOMException('Aborted', 'AbortError')))
      })
    }
    if (typeof fault === 'number') {
      return Promise.resolve(new Response('', { status: fault, headers: fault === 429 ? { 'Retry-After': '30' } : {} }))
    }
    const { status, body: text, headers: told } = store.answer(request)
    if (fault === 'lost') return Promise.reject(new TypeError('Failed to fetch'))
    return Promise.resolve(new Response(status === 204 ? null : text, { status, headers: { ...told } }))
  }
}
