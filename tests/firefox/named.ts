/** Finds what a person would press or read, by its name, wherever on the page it lies: this driver knows no roles. */
import { setTimeout } from 'node:timers/promises'
import { isDeepStrictEqual } from 'node:util'
import type { ElementHandle, Page } from 'puppeteer-core'

/** Looks every 0.1 s up to 30 s: a limit against a page that hangs, not on how fast a poor machine is. */
const looks = 300
const pause = 100
/** times that something is looked for again because it was drawn anew */
const tries = 10

/** What fits the CSS selector, is seen, can be used and has all of these words in its name; waits until there is one. */
export async function named(page: Page, selector: string, name: string): Promise<ElementHandle> {
  for (let look = 0; look < looks; look++) {
    const element = (await page.evaluateHandle(find, selector, name)).asElement()
    if (element) return element as ElementHandle
    await setTimeout(pause)
  }
  throw new Error(`Nothing that fits ${selector} is called "${name}" on the page.`)
}

/**
 * A view that is just being drawn may take away what was found, or move it from under the press: then it is looked for
 * once more.
 */
export async function press(page: Page, name: string, selector = 'button, a'): Promise<void> {
  for (let look = 1; ; look++) {
    const element = await named(page, selector, name)
    try {
      await element.scrollIntoView()
      const place = await element.boundingBox()
      await setTimeout(pause)
      if (look < tries && !isDeepStrictEqual(place, await element.boundingBox())) continue
      await element.click()
      return
    } catch (error) {
      if (look === tries || !(error instanceof Error && /detached|not clickable/i.test(error.message))) throw error
      await setTimeout(pause)
    }
  }
}

/** Presses the label of a box or a circle until that is ticked. */
export async function tick(page: Page, name: string): Promise<void> {
  for (let look = 1; look <= tries; look++) {
    const label = await named(page, 'label', name)
    if (await label.evaluate(isTicked)) return
    await press(page, name, 'label')
    await setTimeout(pause)
  }
  throw new Error(`"${name}" does not stay ticked.`)
}

function isTicked(label: Element): boolean {
  const { control } = label as HTMLLabelElement
  return control instanceof HTMLInputElement && control.checked
}

/** Runs on the page, whose policy lets the driver's own way of waiting make no function. */
function find(selector: string, name: string): Element | undefined {
  const within = (root: Document | ShadowRoot): Element[] => [
    ...root.querySelectorAll(selector),
    ...Array.from(root.querySelectorAll('*'), ({ shadowRoot }) => (shadowRoot ? within(shadowRoot) : [])).flat(),
  ]
  return within(document).find(
    (each) =>
      each.getClientRects().length > 0 &&
      !each.matches(':disabled') &&
      [each.getAttribute('aria-label') ?? each.textContent, each.getAttribute('title') ?? ''].some((text) =>
        text.includes(name),
      ),
  )
}
