/** Orders: every order ranked, what single change helps most, and which tacks would do. */
import { css, html } from 'lit'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { ordersStyles } from './orders-styles.ts'
import './order-ranking.ts'
import './tack-planner.ts'
import './what-to-change.ts'

const parts = ['ranking', 'changes', 'ladder'] as const
type Part = (typeof parts)[number]

export class OrdersView extends SessionElement {
  static override properties = { _part: { state: true } }
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      .head {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 24px;
        align-items: center;
      }
      [hidden] {
        display: none;
      }
    `,
  ]

  declare _part: Part

  constructor() {
    super()
    this._part = 'ranking'
  }

  override render() {
    const { session, _part: part } = this
    return html`<main>
      <div class="panel head">
        <h2>${say('orders.title')}</h2>
        <tack-choice
          .legend=${say('orders.parts')}
          .options=${parts.map((value) => ({ value, label: say(`orders.part.${value}`) }))}
          .value=${part}
          @choose=${(event: ChooseEvent) => (this._part = event.value as Part)}
        ></tack-choice>
      </div>
      <tack-order-ranking ?hidden=${part !== 'ranking'} .session=${session}></tack-order-ranking>
      <tack-what-to-change class="panel" ?hidden=${part !== 'changes'} .session=${session}></tack-what-to-change>
      <tack-planner class="panel" ?hidden=${part !== 'ladder'} .session=${session}></tack-planner>
    </main>`
  }
}

customElements.define('tack-orders-view', OrdersView)
