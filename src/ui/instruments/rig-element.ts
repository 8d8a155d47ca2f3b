/** What the elements of the instruments share: the session's desk of instruments. */
import type { RigDesk } from '../../session/rig-desk.ts'
import { rigDeskOf } from '../../session/rig-desk.ts'
import { SessionElement } from '../session-element.ts'

export abstract class RigElement extends SessionElement {
  #unsubscribe: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.desk.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  protected get desk(): RigDesk {
    return rigDeskOf(this.session)
  }

  /** The number of the next draw of noise; it is used up by asking. */
  protected nextTaken(count = 1): number {
    const { taken } = this.desk.state
    this.desk.set({ taken: taken + count })
    return taken
  }
}
