/** Pins what the bench shows now, which is seen here as its stair: a name, what was expected, what was seen. */
import { css, html } from 'lit'
import { mostTrials } from '../../session/trials.ts'
import { miniStair } from '../mini-stair.ts'
import { colourSolids } from '../orders/colour-solids.ts'
import { orderTreads } from '../orders/order-words.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { trialStyles } from './trial-styles.ts'
import { TrialsElement, orderOf, sheetOf } from './trials-element.ts'

export class PinTrial extends TrialsElement {
  static override properties = { _said: { state: true } }
  static override styles = [
    sharedStyles,
    ordersStyles,
    trialStyles,
    css`
      h3 {
        margin-top: 0;
      }
      form {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 16.25rem), 1fr));
        gap: 8px 16px;
        align-items: start;
        margin-top: 12px;
      }
      label > input {
        min-height: 44px;
      }
      form > div {
        grid-column: 1 / -1;
      }
      .now {
        display: flex;
        gap: 16px;
        align-items: end;
        margin-top: 8px;
        line-height: 1.25rem;
      }
      .now .note {
        display: block;
      }
    `,
  ]

  declare _said: string

  constructor() {
    super()
    this._said = ''
  }

  override render() {
    const { session } = this
    const { setUp } = session
    const usual = say('trials.usualName', { number: this.trials.list.length + 1 })
    return html`
      <h3>${say('trials.pinHead')}</h3>
      <p class="now">
        ${miniStair(orderTreads([...setUp.inks.keys()], setUp.inks, colourSolids(session)))}
        <span>${orderOf({ setUp })}<span class="note">${say('trials.reading')}: ${sheetOf({ setUp })}</span></span>
      </p>
      <form @submit=${this.#pin}>
        <label
          >${say('trials.name')} <input name="name" maxlength="120" placeholder=${usual} autocomplete="off"
        /></label>
        <label>${say('trials.prediction')} <textarea name="prediction" rows="2" maxlength="6000"></textarea></label>
        <label>${say('trials.note')} <textarea name="note" rows="2" maxlength="6000"></textarea></label>
        <div><button type="submit">${say('trials.pin')}</button></div>
      </form>
      <p role="status">${this._said}</p>
    `
  }

  readonly #pin = (event: SubmitEvent): void => {
    event.preventDefault()
    const form = event.target as HTMLFormElement
    const { trials, session } = this
    if (session.printing) {
      this._said = say('trials.printing')
      return
    }
    if (trials.list.length >= mostTrials) {
      this._said = say('trials.full', { most: mostTrials })
      return
    }
    const number = trials.list.length + 1
    const typed = new FormData(form)
    const text = (field: string) => {
      const value = typed.get(field)
      return typeof value === 'string' ? value.trim() : ''
    }
    const name = text('name') || say('trials.usualName', { number })
    trials.pin(session, { name, prediction: text('prediction'), note: text('note') })
    form.reset()
    this._said = say('trials.pinned', { name, number })
  }
}

customElements.define('tack-pin-trial', PinTrial)
