/** Counts what a page takes and gives back that no count of the browser shows: textures and buffers of WebGL, timers. */
import type { Page } from '@playwright/test'

export interface Resources {
  textures: number
  buffers: number
  timers: number
}

/** Called before the page opens. Its graphics pass for those of a graphics card, so that WebGL is used. */
export async function countResources(page: Page): Promise<void> {
  // The program that runs the bench marks every named function so; the page does not know the mark.
  await page.addInitScript({ content: 'window.__name = (named) => named' })
  await page.addInitScript(() => {
    const counts = { textures: 0, buffers: 0 }
    const timers = new Set<unknown>()
    Object.assign(window, { resources: () => ({ ...counts, timers: timers.size }) })

    const graphics = WebGL2RenderingContext.prototype
    const ask = Reflect.get(graphics, 'getParameter') as (name: number) => unknown
    Reflect.set(graphics, 'getParameter', function (this: unknown, name: number): unknown {
      const unmaskedRenderer = 0x9246
      return name === unmaskedRenderer ? 'A graphics card' : ask.call(this, name)
    })
    const counted = (method: string, kind: keyof typeof counts, by: number) => {
      const before = Reflect.get(graphics, method) as (...given: unknown[]) => unknown
      Reflect.set(graphics, method, function (this: unknown, ...given: unknown[]) {
        counts[kind] += by
        return before.apply(this, given)
      })
    }
    counted('createTexture', 'textures', 1)
    counted('deleteTexture', 'textures', -1)
    counted('createBuffer', 'buffers', 1)
    counted('deleteBuffer', 'buffers', -1)

    const setTimeout = window.setTimeout.bind(window)
    const setInterval = window.setInterval.bind(window)
    const clearTimeout = window.clearTimeout.bind(window)
    const clearInterval = window.clearInterval.bind(window)
    const start = (call: () => void, ms?: number) => {
      const timer = setTimeout(() => {
        timers.delete(timer)
        call()
      }, ms)
      timers.add(timer)
      return timer
    }
    const startAgain = (call: () => void, ms?: number) => {
      const timer = setInterval(call, ms)
      timers.add(timer)
      return timer
    }
    const end = (clear: (timer?: number) => void) => (timer?: number) => {
      timers.delete(timer)
      clear(timer)
    }
    Object.assign(window, { setTimeout: start, setInterval: startAgain })
    Object.assign(window, { clearTimeout: end(clearTimeout), clearInterval: end(clearInterval) })
  })
}

export function resources(page: Page): Promise<Resources> {
  return page.evaluate(() => (window as unknown as { resources: () => Resources }).resources())
}
