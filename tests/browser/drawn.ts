/** When the page stands as it will: a slow machine draws what comes into it part by part (src/ui/turns.ts). */
import type { Page } from '@playwright/test'

type Part = Element & { readonly isUpdatePending?: boolean }

/** Every part that has come into the page, or was changed in it, is drawn, laid out and shown. */
export async function drawn(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const waits = (root: Document | ShadowRoot): boolean =>
      Array.from(root.querySelectorAll<Part>('*')).some(
        (part) =>
          part.isUpdatePending === true ||
          (part instanceof HTMLElement && part.style.opacity === '0') ||
          (part.shadowRoot !== null && waits(part.shadowRoot)),
      )
    do await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)))
    while (waits(document))
  })
}
