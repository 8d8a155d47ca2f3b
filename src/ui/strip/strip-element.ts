/** What the elements of the strip share: the desk, the strip of the sheet in force, and the patch under the head. */
import type { Strip } from '../../measure/strip.ts'
import { stripOf } from '../../measure/strip.ts'
import { patchOf } from '../../press/patches.ts'
import type { Run } from '../../press/run.ts'
import type { Desk } from '../../session/desk.ts'
import { deskOf } from '../../session/desk.ts'
import { SessionElement } from '../session-element.ts'

/** One strip for each run, as it keeps what has been read off it. */
const strips = new WeakMap<Run, Strip>()

export abstract class StripElement extends SessionElement {
  #unsubscribeDesk: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribeDesk = this.desk.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribeDesk?.()
  }

  protected get desk(): Desk {
    return deskOf(this.session)
  }

  protected get strip(): Strip {
    const { run } = this.session.results
    let strip = strips.get(run)
    if (!strip) strips.set(run, (strip = stripOf(run)))
    return strip
  }

  /** The patch under the head; at first, and where the chosen one is not on this strip, the last two inks. */
  protected get patch(): number {
    const { patch } = this.desk.state
    const { patches } = this.strip
    const units = this.session.setUp.inks.length
    return patch !== null && patches.includes(patch) ? patch : patchOf([units - 2, units - 1])
  }

  protected get inkNames(): string[] {
    return this.session.setUp.inks.map((ink) => ink.name)
  }
}
