/** The tack planner: limits and what an ink maker supplies go in; the ladder that does it, or what stops it, comes out. */
import { css, html, nothing } from 'lit'
import { ranges } from '../../press/ranges.ts'
import type { SetUp } from '../../press/setup.ts'
import type { Ladder, LadderPlan, LadderWish } from '../../press/tack-ladder.ts'
import { usualWish } from '../../press/tack-ladder.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { linkedText } from '../linked-text.ts'
import '../number-field.ts'
import { say, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { miniStair } from '../mini-stair.ts'
import { OneStudy } from './one-study.ts'
import { inPercent, orderTreads } from './order-words.ts'
import { ordersStyles } from './orders-styles.ts'
import { colourSolids } from './colour-solids.ts'

interface Field {
  name: keyof LadderWish
  unit: '%' | 'tack'
  least: number
  most: number
  step: number
}

const { least: lowestTack, most: highestTack } = ranges.tack
const fields: readonly Field[] = [
  { name: 'mostPicking', unit: '%', least: 0, most: 100, step: 0.1 },
  { name: 'leastTrap', unit: '%', least: 0, most: 100, step: 1 },
  { name: 'lowest', unit: 'tack', least: lowestTack, most: highestTack, step: 1 },
  { name: 'highest', unit: 'tack', least: lowestTack, most: highestTack, step: 1 },
  { name: 'step', unit: 'tack', least: 0.5, most: 4, step: 0.5 },
  { name: 'mostFall', unit: 'tack', least: 0, most: 12, step: 1 },
]

export class TackPlanner extends SessionElement {
  static override properties = {
    _wish: { state: true },
    _plan: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      h3 {
        margin-top: 0;
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 11.25rem), 1fr));
        gap: 8px 16px;
        margin-top: 8px;
      }
      .ladder {
        margin-top: 12px;
      }
    `,
  ]

  declare _wish: LadderWish
  declare _plan: { of: SetUp; plan: LadderPlan } | null
  declare _said: string
  readonly #study: OneStudy<'ladder'> = new OneStudy(this)

  constructor() {
    super()
    this._wish = usualWish
    this._plan = null
    this._said = ''
  }

  override render() {
    return html`
      <h3>${say('orders.ladder')}</h3>
      <p>${linkedText(say('orders.ladderIntro'))}</p>
      <div class="fields">${fields.map((field) => this.#field(field))}</div>
      ${this.#study.row({ go: say('orders.plan'), running: say('orders.planning'), cancel: say('orders.cancel') }, () => this.#start())}
      <p role="status">${this._said}</p>
      ${this._plan ? this.#result(this._plan) : nothing}
    `
  }

  #field({ name, unit, least, most, step }: Field) {
    const scale = unit === '%' ? 100 : 1
    return html`<tack-number-field
      .label=${say(`orders.${name}`)}
      .unit=${unit === '%' ? '%' : say('orders.tackUnits')}
      .least=${least}
      .most=${most}
      .step=${step}
      .value=${scale * this._wish[name]}
      .offer=${(value: number) => {
        const wish = { ...this._wish, [name]: value / scale }
        if (wish.lowest >= wish.highest) return say('orders.wrongSupply')
        this._wish = wish
        return null
      }}
    ></tack-number-field>`
  }

  #result({ of, plan }: { of: SetUp; plan: LadderPlan }) {
    const { best, fitting, tried, stoppedBy, mostTrap, leastPicking, every } = plan
    return html`
      ${of === this.session.setUp ? nothing : html`<p class="mark">${say('orders.changesStale')}</p>`}
      ${
        best
          ? html`<p class="mark">${say('orders.ladderFound', { fitting, tried, ...this.#values(best, of) })}</p>
              ${this.#ladder(best, of)}`
          : html`<p class="mark">
                ${say('orders.ladderNone', { tried })} ${stoppedBy ? say(`orders.stopped.${stoppedBy}`) : nothing}
              </p>
              ${mostTrap ? this.#near('orders.nearMost', mostTrap, of) : nothing}
              ${leastPicking ? this.#near('orders.nearLeast', leastPicking, of) : nothing}`
      }
      ${every ? nothing : html`<p class="note">${say('orders.ladderEqual')}</p>`}
    `
  }

  #near(heading: 'orders.nearMost' | 'orders.nearLeast', ladder: Ladder, of: SetUp) {
    return html`<h3>${say(heading)}</h3>
      <p>${say('orders.ladderIs', this.#values(ladder, of))}</p>
      ${this.#ladder(ladder, of)}`
  }

  #values({ trap, pair: [earlier, later], picking }: Ladder, { inks }: SetUp) {
    return {
      trap: sayNumber(100 * trap, 0),
      later: inks[later].name,
      earlier: inks[earlier].name,
      picking: inPercent(picking),
    }
  }

  #ladder({ tacks }: Ladder, of: SetUp) {
    const inks = of.inks.map((ink, unit) => ({ ...ink, tack: tacks[unit] }))
    const places = inks.map((_, place) => place)
    const words = inks.map(({ name, tack }) => say('orders.tackOf', { name, tack: sayNumber(tack, 0, 1) }))
    return html`<div class="ladder">
      ${miniStair(orderTreads(places, inks, colourSolids(this.session)))}
      <p>${words.join(', ')} (${say('orders.tackUnits')})</p>
      <div class="row">
        <button
          type="button"
          ?disabled=${of !== this.session.setUp}
          @click=${() => {
            const problem = this.attempt({ kind: 'load', given: { ...writeSetUp(of), inks } })
            this._said = problem ?? say('orders.ladderApplied')
          }}
        >
          ${say('orders.applyLadder')}
        </button>
      </div>
    </div>`
  }

  #start(): void {
    const { setUp } = this.session
    this._said = ''
    this.#study.start({ kind: 'ladder', setUp, wish: this._wish }, (plan) => (this._plan = { of: setUp, plan }))
  }
}

customElements.define('tack-planner', TackPlanner)
