/** What a draft needs of this browser (src/session/draft.ts), as far as the browser gives it. */
import type { DraftPorts } from '../session/draft.ts'
import { DraftShelf } from '../session/draft-shelf.ts'

const idKey = 'tackstair tab'

/**
 * ms to wait for an id. A page that is being reloaded lets go of it only a moment later, on a busy machine after seconds;
 * no other tab can have it then. A tab copied with its id is not reloaded, and need not wait long for what it cannot get.
 */
const patience = 500
const patienceOnReload = 5000

export function draftPorts(): DraftPorts {
  const local = given(() => window.localStorage)
  const ofTab = given(() => window.sessionStorage)
  return {
    shelf: local && new DraftShelf(local),
    newId,
    lastId: given(() => ofTab?.getItem(idKey)) ?? null,
    rememberId: (id) => void given(() => ofTab?.setItem(idKey, id)),
    canHold: locks() !== undefined,
    hold,
    isHeld,
    now: () => Date.now(),
    later: (call, ms) => {
      const timer = setTimeout(call, ms)
      return () => clearTimeout(timer)
    },
  }
}

/** Blocked storage throws when it is only looked at; then there is none. */
function given<Thing>(look: () => Thing): Thing | null {
  try {
    return look()
  } catch (error) {
    if (error instanceof DOMException) return null
    throw error
  }
}

export function newId(): string {
  return Array.from(crypto.getRandomValues(new Uint8Array(9)), (byte) => byte.toString(36).padStart(2, '0')).join('')
}

function isReload(): boolean {
  const visit = performance.getEntriesByType('navigation').at(0) as PerformanceNavigationTiming | undefined
  return visit?.type === 'reload'
}

/** Pages without a secure origin have no locks; then every id counts as free. */
function locks(): LockManager | undefined {
  return (navigator as Partial<Navigator>).locks
}

function nameOf(id: string): string {
  return `tackstair tab ${id}`
}

async function hold(id: string): Promise<boolean> {
  const manager = locks()
  if (!manager) return true
  return new Promise((resolve) => {
    const untilGone = () => {
      resolve(true)
      return new Promise<never>(() => undefined)
    }
    const options = { signal: AbortSignal.timeout(isReload() ? patienceOnReload : patience) }
    // Refused in a page without an origin of its own; there no other tab shares the storage either.
    manager.request(nameOf(id), options, untilGone).catch((error: unknown) => {
      resolve(error instanceof DOMException && error.name === 'SecurityError')
    })
  })
}

async function isHeld(id: string): Promise<boolean> {
  const manager = locks()
  if (!manager) return false
  try {
    const { held = [] } = await manager.query()
    return held.some(({ name }) => name === nameOf(id))
  } catch (error) {
    if (error instanceof DOMException) return false
    throw error
  }
}
