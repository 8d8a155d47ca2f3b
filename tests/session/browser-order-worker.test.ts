import { expect, it, vi } from 'vitest'
import { browserOrderWorker } from '../../src/session/browser-order-worker.ts'

it('is the module that all workers share, told what it is by its name, and passes messages and errors on', async () => {
  const made: { url: URL; type: string; name: string }[] = []
  class FakeWorker extends EventTarget {
    constructor(url: URL, { type, name }: { type: string; name: string }) {
      super()
      made.push({ url, type, name })
    }
    postMessage(message: unknown) {
      this.dispatchEvent(Object.assign(new Event('message'), { data: message }))
      this.dispatchEvent(Object.assign(new Event('error'), { message: 'broken' }))
    }
    terminate() {
      made.length = 0
    }
  }
  vi.stubGlobal('Worker', FakeWorker)
  const worker = browserOrderWorker()
  vi.unstubAllGlobals()
  expect(made[0]).toMatchObject({ type: 'module', name: 'orders' })
  expect(made[0].url.pathname).toMatch(/src\/session\/worker\.ts$/)
  const heard: unknown[] = []
  worker.onMessage((message) => heard.push(message))
  worker.onError(({ message }) => heard.push(message))
  worker.send({ kind: 'rank', beginning: [0] })
  expect(heard).toEqual([{ kind: 'rank', beginning: [0] }, 'broken'])
  await worker.end()
  expect(made).toEqual([])
})
