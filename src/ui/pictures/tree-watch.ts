/** Tells whenever something comes or goes in the shadow trees it was shown, or is named or folded there. */
import { within } from './within.ts'

export class TreeWatch {
  readonly #observer: MutationObserver

  constructor(changed: () => void) {
    this.#observer = new MutationObserver(changed)
  }

  /** What takes the place of a child of `root` is told of too. */
  watchChildren(root: ShadowRoot): void {
    this.#observer.observe(root, { childList: true })
  }

  /** To be called again after each change: trees may have come with it. */
  watchWithin(element: Element): void {
    const attributeFilter = ['aria-label', 'role', 'open', 'hidden']
    for (const { shadowRoot } of [element, ...within(element.shadowRoot ?? element)])
      if (shadowRoot) this.#observer.observe(shadowRoot, { childList: true, subtree: true, attributeFilter })
  }

  end(): void {
    this.#observer.disconnect()
  }
}
