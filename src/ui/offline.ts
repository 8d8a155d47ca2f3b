/**
 * Keeps the page for times without a network. A newer version is fetched in the background and then waits: nothing is
 * loaded again until a person says so, and then only in that person's tab.
 */

export interface OfflineNews {
  /** a newer version waits; `take` loads the page again, with that version */
  newVersion: (take: () => void) => void
  /** another tab has taken a newer version; this page goes on as it is */
  replaced: () => void
}

/**
 * True once everything is kept, so that the page opens without a network from now on; false where the browser keeps no
 * pages, as for one opened from a file or served without a secure origin.
 */
export async function keepOffline(news: OfflineNews): Promise<boolean> {
  const workers = (navigator as Partial<Navigator>).serviceWorker
  if (!import.meta.env.PROD || !workers || !location.protocol.startsWith('http')) return false
  const hadWorker = workers.controller !== null
  let taken = false
  workers.addEventListener('controllerchange', () => {
    if (taken) location.reload()
    else if (hadWorker) news.replaced()
  })
  await settled()
  const registration = await register(workers)
  if (!registration) return false

  const take = () => {
    taken = true
    if (registration.waiting) registration.waiting.postMessage({ type: 'SKIP_WAITING' })
    else location.reload()
  }
  if (registration.waiting && hadWorker) news.newVersion(take)
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed' && hadWorker) news.newVersion(take)
    })
  })
  await workers.ready
  return true
}

/** ms after all has loaded: keeping the page fetches all of it, which must not hold up the first view. */
const patience = 2000

async function settled(): Promise<void> {
  if (document.readyState !== 'complete') {
    await new Promise((resolve) => addEventListener('load', resolve, { once: true }))
  }
  await new Promise((resolve) => setTimeout(resolve, patience))
}

async function register(workers: ServiceWorkerContainer): Promise<ServiceWorkerRegistration | null> {
  try {
    return await workers.register(new URL('sw.js', document.baseURI))
  } catch (error) {
    // A browser may refuse, as where the storage is blocked; the page works all the same.
    if (error instanceof TypeError || error instanceof DOMException) return null
    throw error
  }
}
