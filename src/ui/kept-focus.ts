/**
 * Where an update takes away or disables what has the focus, whoever works by keyboard would begin anew at the top of the
 * page. An element with this gives the focus to the nearest control that is left: before the old place, else behind it.
 */
import type { LitElement, ReactiveController } from 'lit'

const controls = 'button, input, select, textarea, summary, a[href], [tabindex]'

export class KeptFocus implements ReactiveController {
  readonly #host: LitElement
  #held: HTMLElement | null = null
  /** what the held control stands in, inmost first */
  #around: Element[] = []
  /** the other controls by the order in which they are tried */
  #others: HTMLElement[] = []

  constructor(host: LitElement) {
    this.#host = host
    host.addController(this)
  }

  hostUpdate(): void {
    const root = this.#host.renderRoot as ShadowRoot
    const held = root.activeElement
    this.#held = held instanceof HTMLElement ? held : null
    if (!this.#held) return
    this.#around = []
    for (let around = this.#held.parentElement; around; around = around.parentElement) this.#around.push(around)
    const all = Array.from(root.querySelectorAll<HTMLElement>(controls))
    const at = all.indexOf(this.#held)
    this.#others = [...all.slice(0, Math.max(0, at)).reverse(), ...all.slice(at + 1)]
  }

  hostUpdated(): void {
    const held = this.#held
    if (!held || (held.isConnected && !held.matches(':disabled'))) return
    for (const around of this.#around.filter(({ isConnected }) => isConnected)) {
      const there = [...this.#others, ...around.querySelectorAll<HTMLElement>(controls)]
      const near = there.find((other) => around.contains(other) && !other.matches(':disabled'))
      if (near) {
        near.focus()
        return
      }
    }
  }
}
