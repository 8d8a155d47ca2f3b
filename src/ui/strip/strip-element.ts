/** What the elements of the strip share: the desk, the strip of the sheet in force, and the patch under the head. */
import type { Strip } from '../../measure/strip.ts'
import { stripOf } from '../../measure/strip.ts'
import { patchOf, printsIn } from '../../press/patches.ts'
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

  /**
   * The patch under the head is the one looked at on the bench. Until one has been chosen, and where that one is not on
   * the strip, it is the overprint of the last two inks.
   */
  protected get patch(): number {
    const { patch, look, setUp } = this.session
    const chosen = this.desk.state.patchChosen || look.leftOut.length > 0
    const units = setUp.inks.length
    return chosen && this.strip.patches.includes(patch) ? patch : patchOf([units - 2, units - 1])
  }

  protected choosePatch(patch: number): void {
    const leftOut = this.inkNames.filter((_, unit) => !printsIn(patch, unit))
    this.desk.set({ patchChosen: true })
    this.session.lookWith({ leftOut })
  }

  protected get inkNames(): string[] {
    return this.session.setUp.inks.map((ink) => ink.name)
  }
}
