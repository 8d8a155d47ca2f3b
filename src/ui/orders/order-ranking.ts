/** The ranking: start and progress, what the score counts, the picture of positions, the table, and two orders in step. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import type { Table } from '../../report/csv.ts'
import { mannerOf, writeCsv } from '../../report/csv.ts'
import { factorial } from '../../press/orders.ts'
import type { PositionScores } from '../../press/order-positions.ts'
import { positionScores } from '../../press/order-positions.ts'
import { inkLetters } from '../../session/letters.ts'
import type { OrderList, Weighed } from '../../session/order-list.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { linkedText } from '../linked-text.ts'
import { KeptFocus } from '../kept-focus.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import { miniStair } from '../mini-stair.ts'
import './order-pair.ts'
import './order-table.ts'
import type { OrderEvent } from './order-event.ts'
import { orderNames } from './order-words.ts'
import { ordersStyles } from './orders-styles.ts'
import './position-picture.ts'
import { RankingElement } from './ranking-element.ts'
import './score-weights.ts'

export class OrderRanking extends RankingElement {
  static override properties = { _pair: { state: true }, _said: { state: true } }
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      .parts {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
      }
      .stairs {
        display: flex;
        flex-wrap: wrap;
        gap: 16px 32px;
        margin: 12px 0;
      }
      figure {
        margin: 0;
      }
      @media (min-width: 62.5em) {
        .parts:not(.listed) {
          grid-template-columns: minmax(0, 2fr) minmax(0, 3fr);
        }
      }
      /* The table is as long as what is said of it and the picture together. */
      @media (min-width: 85em) {
        .listed {
          grid-template: auto minmax(0, 1fr) auto / 23rem minmax(0, 1fr);
        }
        .list {
          grid-area: 1 / 2 / span 2;
        }
        .pair {
          grid-column: 1 / -1;
        }
      }
    `,
  ]

  /** numbers of the orders to compare */
  declare _pair: readonly number[]
  declare _said: string
  #weighed: { of: OrderList; count: number; by: unknown; weighed: Weighed } | undefined
  #positions: { by: Weighed; scores: PositionScores | undefined } | undefined

  constructor() {
    super()
    new KeptFocus(this)
    this._pair = []
    this._said = ''
  }

  override render() {
    const { session, ranking } = this
    const { task, list } = ranking.state
    const all = factorial(session.setUp.inks.length)
    const listed = task && list && list.count > 0 ? { task, list } : null
    return html`<div class=${listed ? 'parts listed' : 'parts'}>
      <div class="panel">
        <h3>${say('orders.ranking')}</h3>
        <p>${linkedText(say('orders.rankingIntro'))}</p>
        <div class="row">${this.#control(all)}</div>
        <div role="status">${this.#standing()}</div>
        <tack-score-weights .session=${session}></tack-score-weights>
      </div>
      <div class="panel">
        <h3>${say('orders.harm')}</h3>
        ${this.#picture()}
      </div>
      ${
        listed
          ? html`<div class="panel list">
                <tack-order-table
                  .session=${session}
                  .inks=${listed.task.setUp.inks}
                  .list=${listed.list}
                  .weighed=${this.#weigh(listed.list)}
                  .pair=${this._pair}
                  .loadable=${ranking.holdsFor(session.setUp)}
                  @order=${(event: OrderEvent) => this.#act(event, listed.list)}
                ></tack-order-table>
                <div class="row">
                  <button type="button" @click=${() => this.#save(listed.list)}>${say('orders.csv')}</button>
                </div>
                <p role="status">${this._said}</p>
              </div>
              <tack-order-pair
                class="panel pair"
                .session=${session}
                .setUp=${listed.task.setUp}
                .orders=${this.#pairOf(listed.list)}
                @closed=${() => (this._pair = [])}
              ></tack-order-pair>`
          : nothing
      }
    </div>`
  }

  override updated(changed: PropertyValues): void {
    // The second order has been chosen far below the top of a long table.
    if (changed.has('_pair') && this._pair.length === 2) {
      this.renderRoot.querySelector('tack-order-pair')?.scrollIntoView({ block: 'nearest' })
    }
  }

  #control(all: number) {
    const { running, done, task } = this.ranking.state
    if (running === null) {
      const again = task && this.ranking.holdsFor(this.session.setUp)
      return html`<button type="button" class=${again ? nothing : 'first'} @click=${() => this.#start()}>
        ${say(again ? 'orders.rankAgain' : 'orders.rank', { all })}
      </button>`
    }
    const text =
      running === 'searching' ? say('orders.searching') : say('orders.progress', { done, all: this.ranking.state.all })
    return html`<progress max=${this.ranking.state.all} .value=${done} aria-label=${text}></progress>
      <span>${text}</span>
      <button type="button" @click=${() => this.ranking.cancel()}>${say('orders.cancel')}</button>`
  }

  /** How far the answer can be trusted. */
  #standing() {
    const { ranking } = this
    const { task, list, running, done, all, mostPossible } = ranking.state
    if (!task || !list) return html`<p class="note">${say('orders.none')}</p>`
    const stale = ranking.holdsFor(this.session.setUp) ? nothing : html`<p class="mark">${say('orders.stale')}</p>`
    if (ranking.complete)
      return html`<p>${say('orders.finished', { all })}</p>
        ${stale}`
    const { best, scores } = this.#weigh(list)
    return html`
      ${
        mostPossible !== null
          ? html`<p class="mark">
              ${say('orders.bounded', {
                found: list.count,
                all,
                best: sayNumber(scores[best[0]], 1),
                most: sayNumber(mostPossible, 1),
              })}
              ${task.weights === ranking.weights ? nothing : say('orders.boundedWeights')}
            </p>`
          : nothing
      }
      ${running === null ? html`<p class="mark">${say('orders.stopped', { done, all })}</p>` : nothing} ${stale}
    `
  }

  #picture() {
    const { task, list } = this.ranking.state
    // Orders come beginning by beginning: the means of a part of them would say something else than those of all.
    if (!task || !list) return this.#stairs()
    if (!this.ranking.complete) return html`<p class="note">${say('orders.harmWaits')}</p>`
    const scores = this.#positionsOf(list)
    if (!scores) return html`<p class="note">${say('orders.harmWaits')}</p>`
    return html`<tack-position-picture
      .inks=${task.setUp.inks}
      .colours=${this.colours}
      .positions=${scores}
    ></tack-position-picture>`
  }

  /** Before anything is ranked: two of the orders, as stairs. */
  #stairs() {
    const { inks } = this.session.setUp
    const letters = inkLetters(inks.map(({ name }) => name))
    const treads = inks.map(({ tack }, unit) => ({
      tack,
      letter: letters[unit],
      colour: this.session.colours.solids[unit],
    }))
    return html`<div class="stairs">
        <figure>
          ${miniStair(treads)}
          <figcaption>${say('orders.asLoaded')}</figcaption>
        </figure>
        <figure>
          ${miniStair(treads.toReversed())}
          <figcaption>${say('orders.turnedRound')}</figcaption>
        </figure>
      </div>
      <p class="note">${say('orders.harmWaits')}</p>`
  }

  #start(): void {
    this._pair = []
    this._said = ''
    // One core is left to the page where there are enough of them; it needs little while it waits.
    this.ranking.start(this.session.setUp, Math.max(2, navigator.hardwareConcurrency - 1))
  }

  #weigh(list: OrderList): Weighed {
    const { weights } = this.ranking
    const kept = this.#weighed
    if (kept?.of === list && kept.count === list.count && kept.by === weights) return kept.weighed
    const weighed = list.weigh(weights)
    this.#weighed = { of: list, count: list.count, by: weights, weighed }
    return weighed
  }

  #positionsOf(list: OrderList): PositionScores | undefined {
    const weighed = this.#weigh(list)
    if (this.#positions?.by !== weighed) {
      this.#positions = { by: weighed, scores: positionScores(list.inks, list.scored(weighed)) }
    }
    return this.#positions.scores
  }

  #act({ act, number }: OrderEvent, list: OrderList): void {
    const { task } = this.ranking.state
    if (!task) return
    if (act === 'compare') {
      const others = this._pair.filter((each) => each !== number)
      this._pair = others.length < this._pair.length ? others : [...others.slice(-1), number]
      return
    }
    const { setUp } = this.session
    const names = list.order(number).map((place) => task.setUp.inks[place].name)
    const written = writeSetUp(setUp)
    const inks = names.map((name) => written.inks.find((ink) => ink.name === name))
    const problem = this.attempt({ kind: 'load', given: { ...written, inks } })
    this._said = problem ?? say('orders.loaded', { order: names.join(', ') })
  }

  #pairOf(list: OrderList) {
    const { best, scores } = this.#weigh(list)
    return this._pair.map((number) => ({
      order: list.order(number),
      rank: best.indexOf(number) + 1,
      score: scores[number],
    }))
  }

  #save(list: OrderList): void {
    const { task } = this.ranking.state
    if (!task) return
    const { best, scores } = this.#weigh(list)
    const { inks } = task.setUp
    const table: Table = {
      columns: [
        { heading: say('orders.place'), unit: null },
        ...inks.map((_, unit) => ({ heading: say('orders.unit', { unit: unit + 1 }), unit: null })),
        { heading: say('orders.score'), unit: say('orders.points') },
        { heading: say('orders.csvTrap'), unit: '%' },
        { heading: say('orders.csvContamination'), unit: '%' },
        { heading: say('orders.csvPicking'), unit: '%' },
        { heading: say('orders.colour'), unit: null },
      ],
      rows: Array.from(best, (number, index) => {
        const { trap, contamination, picking, colour } = list.terms(number)
        const names = list.order(number).map((place) => inks[place].name)
        return [index + 1, ...names, scores[number], 100 * trap, 100 * contamination, 100 * picking, colour]
      }),
    }
    saveText('orders.csv', 'text/csv', writeCsv(table, mannerOf(navigator.language)))
    this._said = say('orders.saved', { name: orderNames(list.order(best[0]), inks), count: best.length })
  }
}

customElements.define('tack-order-ranking', OrderRanking)
