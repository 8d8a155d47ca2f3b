/** Requests to a learning record store (xAPI 1.0.3), with a limit on waiting; what came back is one of a few outcomes. */
export interface Answer {
  /** 0 where no answer came: no network, a store that is down, or patience at its end */
  readonly status: number
  readonly text: string
  readonly etag: string | null
  /** ms the store asks to wait */
  readonly wait: number | undefined
}

const noAnswer: Answer = { status: 0, text: '', etag: null, wait: undefined }

export interface StorePorts {
  readonly fetch: (address: string, request: RequestInit) => Promise<Response>
  readonly later: (call: () => void, ms: number) => () => void
}

/** ms until a store that does not answer counts as out of reach. Chosen: longer than a slow line needs. */
const patience = 20_000
/** Bytes that a browser carries on with once the page is gone (Fetch standard: 64 KiB in all). */
const mostOnClosing = 60_000

export class RecordStore {
  readonly #endpoint: string
  readonly #ports: StorePorts
  #token = ''

  constructor(endpoint: string, ports: StorePorts) {
    this.#endpoint = endpoint
    this.#ports = ports
  }

  set token(token: string) {
    this.#token = token
  }

  get(resource: string, query: Readonly<Record<string, string>>): Promise<Answer> {
    return this.request(this.#address(resource, query), { method: 'GET', headers: this.#headers() })
  }

  send(
    method: 'POST' | 'PUT',
    resource: string,
    query: Readonly<Record<string, string>>,
    body: string,
    headers: Readonly<Record<string, string>> = {},
  ): Promise<Answer> {
    // Where the page is closed meanwhile, the browser still delivers it.
    const keepalive = body.length < mostOnClosing / 4
    return this.request(this.#address(resource, query), {
      method,
      body,
      keepalive,
      headers: { ...this.#headers(), 'Content-Type': 'application/json', ...headers },
    })
  }

  /** Handed to the browser as the page goes; false where it is too much for that. */
  sendOff(method: 'POST' | 'PUT', resource: string, query: Readonly<Record<string, string>>, body: string): boolean {
    if (new TextEncoder().encode(body).length > mostOnClosing) return false
    const headers = { ...this.#headers(), 'Content-Type': 'application/json' }
    this.#ports
      .fetch(this.#address(resource, query), { method, body, keepalive: true, headers })
      .catch((error: unknown) => {
        // Nobody is there any more to hear of it; what did not arrive waits in the browser.
        if (!(error instanceof TypeError)) throw error
      })
    return true
  }

  async request(address: string, request: RequestInit): Promise<Answer> {
    const { signal, done } = this.#limit()
    try {
      const response = await this.#ports.fetch(address, { ...request, signal, cache: 'no-store' })
      const text = await response.text()
      const wait = Number(response.headers.get('Retry-After') ?? NaN)
      return {
        status: response.status,
        text,
        etag: response.headers.get('ETag'),
        wait: wait > 0 ? 1000 * wait : undefined,
      }
    } catch (error) {
      if (error instanceof TypeError || error instanceof DOMException) return noAnswer
      throw error
    } finally {
      done()
    }
  }

  #limit(): { signal: AbortSignal; done: () => void } {
    const controller = new AbortController()
    return { signal: controller.signal, done: this.#ports.later(() => controller.abort(), patience) }
  }

  #address(resource: string, query: Readonly<Record<string, string>>): string {
    const parts = new URLSearchParams(query).toString()
    return `${this.#endpoint}${resource}${parts === '' ? '' : `?${parts}`}`
  }

  #headers(): Record<string, string> {
    return { Authorization: `Basic ${this.#token}`, 'X-Experience-API-Version': '1.0.3' }
  }
}
