/** What the elements of the drills share: the session's desk of drills, and how the catalogue says what a drill says. */
import type { DrillSaid } from '../../drill/said.ts'
import type { DrillDesk } from '../../session/drill-desk.ts'
import { drillDeskOf } from '../../session/drill-desk.ts'
import { browserStorage } from '../browser-storage.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'

export abstract class DrillElement extends SessionElement {
  #unsubscribe: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.desk.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  protected get desk(): DrillDesk {
    return drillDeskOf(this.session, browserStorage, () => Date.now())
  }
}

export function saySaid({ message, values }: DrillSaid): string {
  return say(message, { ...values })
}
