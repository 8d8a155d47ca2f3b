/** What the elements of the run chart share: the long run of the session. */
import type { AskedEvent, RunDesk } from '../../session/run-desk.ts'
import { runDeskOf } from '../../session/run-desk.ts'
import { say, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'

export abstract class RunElement extends SessionElement {
  #unsubscribe: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.desk.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  protected get desk(): RunDesk {
    return runDeskOf(this.session)
  }
}

/** "Before sheet 5,000: wash-up of yellow". */
export function eventWords({ kind, sheet, ink = '', tack, film }: AskedEvent): string {
  const what = tack === undefined ? 'film' : 'tack'
  return say(`run.told.${kind}`, {
    sheet,
    ink,
    what: say(`run.change.${what}`),
    value: sayNumber(tack ?? film ?? 0, 0, 2),
    unit: say(`run.unitOf.${what}`),
  })
}
