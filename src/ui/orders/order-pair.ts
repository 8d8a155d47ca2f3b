/**
 * Two orders side by side: each gets a bench of its own, hidden but for the section, and both are moved by the same
 * events, so that they stay in step.
 */
import type { PropertyValues } from 'lit'
import { css, html } from 'lit'
import type { SetUp } from '../../press/setup.ts'
import { tellNip } from '../../press/tell.ts'
import type { PlaybackEvent } from '../../session/playback.ts'
import { Session } from '../../session/session.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { linkedText } from '../linked-text.ts'
import { prefersStill } from '../motion.ts'
import { say, sayNumber, sayPercent } from '../say.ts'
import '../section-picture.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { colourSolids } from './colour-solids.ts'
import { miniStair } from '../mini-stair.ts'
import { orderNames, orderTreads } from './order-words.ts'
import { ordersStyles } from './orders-styles.ts'

export interface PairedOrder {
  order: readonly number[]
  rank: number
  score: number
}

/** s: a frame later than this was not late but asleep. */
const longestFrame = 0.25
const readings = ['first', 'settled'] as const

export class OrderPair extends SessionElement {
  static override properties = {
    setUp: { attribute: false },
    orders: { attribute: false },
    _reading: { state: true },
    _moved: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      h3 {
        margin-top: 0;
      }
      .two {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 20rem), 1fr));
        gap: 8px 16px;
        margin-top: 8px;
      }
      tack-section-picture {
        height: 16.25rem;
        border: 1px solid var(--line);
      }
      h4 {
        margin: 0;
        font-size: 0.9375rem;
      }
      input[type='range'] {
        width: 15rem;
        max-width: 100%;
        vertical-align: middle;
      }
      .buttons {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
      }
    `,
  ]

  /** what was ranked; the orders' places are places in its inks */
  declare setUp: SetUp
  declare orders: readonly PairedOrder[]
  declare _reading: (typeof readings)[number]
  /** counts what the two benches told */
  declare _moved: number

  #benches: { key: string; session: Session; unsubscribe: () => void }[] = []
  #frame = 0

  constructor() {
    super()
    this.orders = []
    this._reading = 'settled'
    this._moved = 0
  }

  override connectedCallback(): void {
    super.connectedCallback()
    // Taken out of the page and put back, it needs its benches anew.
    if (this.hasUpdated) this.requestUpdate('orders', [])
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#letGo()
  }

  override willUpdate(changed: PropertyValues): void {
    if (!['orders', 'setUp', '_reading'].some((each) => changed.has(each))) return
    const keys = this.orders.length < 2 ? [] : this.orders.map(({ order }) => `${order.join()} ${this._reading}`)
    if (keys.join('|') === this.#benches.map(({ key }) => key).join('|') && !changed.has('setUp')) return
    this.#letGo()
    this.#benches = keys.map((key, index) => {
      const session = this.#bench(this.orders[index].order)
      return { key, session, unsubscribe: session.subscribe(() => this._moved++) }
    })
  }

  override render() {
    const one = this.orders.at(0)
    const close = html`<button type="button" @click=${() => this.dispatchEvent(new Event('closed'))}>
      ${say('orders.pairClose')}
    </button>`
    if (this.#benches.length < 2) {
      return html`<h3>${say('orders.pair')}</h3>
        <p role="status">
          ${one ? say('orders.pairOne', { order: orderNames(one.order, this.setUp.inks) }) : say('orders.pairHint')}
        </p>`
    }
    const { playback } = this.#benches[0].session
    const running = playback.playing && playback.stopsAfter !== 'nip'
    return html`
      <h3>${say('orders.pair')}</h3>
      <div class="row">
        <div class="buttons">
          <button type="button" @click=${() => this.#play({ kind: running ? 'pause' : 'play' })}>
            ${say(running ? 'bench.pause' : 'bench.play')}
          </button>
          <button type="button" @click=${() => this.#play({ kind: 'step nip', atOnce: prefersStill() })}>
            ${say('bench.stepNip')}
          </button>
        </div>
        <tack-choice
          drawLegend
          .legend=${say('orders.pairUnit')}
          .options=${this.setUp.inks.map((_, unit) => ({
            value: String(unit),
            label: String(unit + 1),
            name: say('orders.unit', { unit: unit + 1 }),
          }))}
          .value=${String(playback.unit)}
          @choose=${({ value }: ChooseEvent) => this.#play({ kind: 'look at unit', unit: Number(value) })}
        ></tack-choice>
        <tack-choice
          drawLegend
          .legend=${say('orders.pairSheet')}
          .options=${readings.map((value) => ({ value, label: say(`bench.reading.${value}`) }))}
          .value=${this._reading}
          @choose=${({ value }: ChooseEvent) => (this._reading = value as OrderPair['_reading'])}
        ></tack-choice>
        <label
          >${say('orders.pairNip')}
          <input
            type="range"
            min="0"
            max="100"
            @input=${(event: Event) =>
              this.#play({ kind: 'scrub', phase: Number((event.target as HTMLInputElement).value) / 100 })}
        /></label>
        ${close}
      </div>
      <div class="two">${this.#benches.map(({ session }, index) => this.#side(session, this.orders[index]))}</div>
    `
  }

  #side(session: Session, { order, rank, score }: PairedOrder) {
    const { setUp, results, patch, playback } = session
    const names = setUp.inks.map(({ name }) => name)
    const account = results.accounts(patch)[playback.unit]
    const told = tellNip(account, names).map(({ message, values }) => say(message, { ...values }))
    const { films, onBare } = results.readings
    const all = films[films.length - 1]
    return html`<section>
      <h4>${say('orders.pairRank', { rank, score: sayNumber(score, 2) })}</h4>
      ${miniStair(orderTreads(order, this.setUp.inks, colourSolids(this.session)))}
      <p class="note">${names.join(', ')}</p>
      <tack-section-picture .session=${session}></tack-section-picture>
      <p>${linkedText(told.join(' '))}</p>
      <ul>
        ${names.map(
          (ink, unit) => html`<li>${say('orders.pairKept', { ink, kept: sayPercent(all[unit] / onBare[unit]) })}</li>`,
        )}
      </ul>
    </section>`
  }

  override updated(): void {
    this.#showPhase()
  }

  #showPhase(): void {
    const scrub = this.renderRoot.querySelector<HTMLInputElement>('input[type=range]')
    if (!scrub || this.#benches.length === 0) return
    const percent = Math.round(100 * this.#benches[0].session.playback.phase)
    scrub.value = String(percent)
    scrub.setAttribute('aria-valuetext', say('bench.phase', { percent }))
  }

  #bench(order: readonly number[]): Session {
    const session = new Session()
    const written = writeSetUp(this.setUp)
    const inks = order.map((place) => written.inks[place])
    const problem = session.change({ kind: 'load', given: { ...written, inks, reading: this._reading } }).at(0)
    if (problem) throw new Error(`A ranked order cannot be printed: ${problem.message}`)
    session.lookWith({ measures: this.session.look.measures })
    session.play({ kind: 'look at unit', unit: inks.length - 1 })
    return session
  }

  /** Both benches get every event, so that they stay in step. */
  #play(event: PlaybackEvent): void {
    for (const { session } of this.#benches) session.play(event)
    this.#showPhase()
    const isPlaying = () => this.#benches.some(({ session }) => session.playback.playing)
    if (this.#frame !== 0 || !isPlaying()) return
    let last = performance.now()
    const tick = (now: number) => {
      const seconds = Math.min(longestFrame, (now - last) / 1000)
      last = now
      for (const { session } of this.#benches) session.play({ kind: 'tick', seconds })
      this.#showPhase()
      this.#frame = isPlaying() ? requestAnimationFrame(tick) : 0
    }
    this.#frame = requestAnimationFrame(tick)
  }

  #letGo(): void {
    cancelAnimationFrame(this.#frame)
    this.#frame = 0
    for (const { unsubscribe } of this.#benches) unsubscribe()
    this.#benches = []
  }
}

customElements.define('tack-order-pair', OrderPair)
