import { afterEach, expect, test, vi } from 'vitest'
import { draftPorts } from '../../src/ui/draft-ports.ts'

afterEach(() => {
  vi.unstubAllGlobals()
})

function storage(): Storage {
  const entries = new Map<string, string>()
  return {
    get length() {
      return entries.size
    },
    clear: () => entries.clear(),
    key: (index) => [...entries.keys()][index] ?? null,
    getItem: (key) => entries.get(key) ?? null,
    setItem: (key, value) => void entries.set(key, value),
    removeItem: (key) => void entries.delete(key),
  }
}

/** Locks of one browser, as far as they are used here. */
class Locks {
  readonly held = new Set<string>()
  readonly #waiting: { name: string; take: () => void }[] = []

  async request(name: string, { signal }: { signal?: AbortSignal }, held: () => Promise<unknown>): Promise<void> {
    if (this.held.has(name)) {
      await new Promise<void>((take, refuse) => {
        const waits = { name, take }
        this.#waiting.push(waits)
        signal?.addEventListener('abort', () => {
          this.#waiting.splice(this.#waiting.indexOf(waits), 1)
          refuse(signal.reason as DOMException)
        })
      })
    }
    this.held.add(name)
    await held()
    this.held.delete(name)
    this.#waiting.find((each) => each.name === name)?.take()
  }

  query() {
    return Promise.resolve({ held: [...this.held].map((name) => ({ name })) })
  }
}

function browser(local: () => Storage, locks: unknown): void {
  const own = storage()
  vi.stubGlobal('window', {
    get localStorage() {
      return local()
    },
    sessionStorage: own,
  })
  vi.stubGlobal('navigator', { locks })
}

test('a tab holds its id, remembers it over a reload, and another tab cannot have it', async () => {
  const local = storage()
  browser(() => local, new Locks())
  const ports = draftPorts()
  expect(ports.lastId).toBeNull()
  expect(ports.canHold).toBe(true)
  const id = ports.newId()
  expect(ports.newId()).not.toBe(id)
  expect(await ports.isHeld(id)).toBe(false)
  expect(await ports.hold(id)).toBe(true)
  expect(await ports.isHeld(id)).toBe(true)
  expect(await ports.hold(id)).toBe(false)
  ports.rememberId(id)
  expect(draftPorts().lastId).toBe(id)
})

test('a page that is reloaded gets its id back though the page before it lets go late', async () => {
  const locks = new Locks()
  browser(storage, locks)
  vi.stubGlobal('performance', { getEntriesByType: () => [{ type: 'reload' }] })
  let letGo: () => void = () => undefined
  const before = new Promise<void>((resolve) => (letGo = resolve))
  void locks.request('tackstair tab x', {}, () => before)
  setTimeout(letGo, 900)
  expect(await draftPorts().hold('x')).toBe(true)
})

test('a browser that blocks its storage has no shelf, and nothing is thrown', () => {
  browser(() => {
    throw new DOMException('The page may not keep anything.', 'SecurityError')
  }, new Locks())
  expect(draftPorts().shelf).toBeNull()
})

test('where there are no locks no id is held, and none is taken for held', async () => {
  const local = storage()
  browser(() => local, undefined)
  const ports = draftPorts()
  expect(ports.canHold).toBe(false)
  expect(await ports.hold('x')).toBe(true)
  expect(await ports.isHeld('x')).toBe(false)
})
