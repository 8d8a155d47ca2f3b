/** What to change: every single step computed, cautions first, the worthiest first, each with its cost and a way to try it. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import type { TriedChange } from '../../press/changes.ts'
import type { SetUp } from '../../press/setup.ts'
import { rankingOf } from '../../session/ranking.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { signed } from './order-words.ts'
import { OneStudy } from './one-study.ts'
import { ordersStyles } from './orders-styles.ts'

/** Points of score below which a change gains nothing worth telling. */
const leastGain = 0.05
/** Shares of 1 below which a reading is told as unchanged. */
const leastDifference = 0.0005

export class WhatToChange extends SessionElement {
  static override properties = {
    _found: { state: true },
    _all: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    tableStyles,
    css`
      h3 {
        margin-top: 0;
      }
      .cautions {
        margin-top: 12px;
        padding: 8px 12px;
        border: 2px solid var(--graphite);
      }
      .cautions li {
        max-width: 80ch;
      }
      td.words,
      th.words {
        min-width: 10rem;
        max-width: 18.75rem;
      }
    `,
  ]

  declare _found: { of: SetUp; changes: readonly TriedChange[] } | null
  /** whether changes without a gain are shown too */
  declare _all: boolean
  declare _said: string
  readonly #study: OneStudy<'changes'> = new OneStudy(this)

  constructor() {
    super()
    this._found = null
    this._all = false
    this._said = ''
  }

  override render() {
    return html`
      <h3>${say('orders.changes')}</h3>
      <p>${linkedText(say('orders.changesIntro'))}</p>
      ${this.#study.row({ go: say('orders.changesGo'), running: say('orders.changesRunning'), cancel: say('orders.cancel') }, () => this.#start())}
      <p role="status">${this._said}</p>
      ${this._found ? this.#result(this._found) : nothing}
    `
  }

  #result({ of, changes }: { of: SetUp; changes: readonly TriedChange[] }) {
    const gaining = changes.filter(({ gain }) => gain >= leastGain)
    const shown = this._all ? changes : gaining
    const stale = of !== this.session.setUp
    const cautions = [...new Set(shown.flatMap((each) => each.cautions))]
    // The general one stays last, as in each change.
    cautions.sort((a, b) => Number(a === 'teaching-model') - Number(b === 'teaching-model'))
    return html`
      ${stale ? html`<p class="mark">${say('orders.changesStale')}</p>` : nothing}
      ${
        cautions.length > 0
          ? html`<section class="cautions" aria-labelledby="first">
              <h3 id="first">${say('orders.caution')}</h3>
              <ul>
                ${cautions.map((caution) => html`<li>${say(caution)}</li>`)}
              </ul>
            </section>`
          : nothing
      }
      ${gaining.length === 0 ? html`<p class="mark">${say('orders.noGain')}</p>` : nothing}
      ${
        shown.length > 0
          ? html`<div class="scroll" tabindex="0" role="region" aria-label=${say('orders.changes')}>
              <table>
                <thead>
                  <tr>
                    <th scope="col" class="words">${say('orders.whatChange')}</th>
                    <th scope="col">${say('orders.gain')}</th>
                    <th scope="col">${say('orders.effort')}</th>
                    <th scope="col" class="words">${say('orders.effects')}</th>
                    <th scope="col" class="words">${say('orders.costs')}</th>
                    <th scope="col"><span class="unseen">${say('orders.tryIt')}</span></th>
                  </tr>
                </thead>
                <tbody>
                  ${shown.map((each) => this.#row(each, of, stale))}
                </tbody>
              </table>
            </div>`
          : nothing
      }
      <p class="note">${say('orders.effortKey')}</p>
      <label class="check"
        ><input
          type="checkbox"
          .checked=${this._all}
          @change=${() => (this._all = !this._all)}
        />${say('orders.changesAll')}</label
      >
    `
  }

  #row(tried: TriedChange, of: SetUp, stale: boolean) {
    const change = changeWords(tried, of)
    return html`<tr>
      <th scope="row" class="words">${change}</th>
      <td>${signed(tried.gain, 1)}</td>
      <td>${sayNumber(tried.effort, 0)}</td>
      <td class="words">${effects(tried)}</td>
      <td class="words">${say(tried.cost)}</td>
      <td>
        <button
          type="button"
          ?disabled=${stale}
          aria-label=${say('orders.tryItNamed', { change })}
          @click=${() => {
            const problem = this.attempt({ kind: 'load', given: writeSetUp(tried.setUp) })
            this._said = problem ?? say('orders.tried', { change })
          }}
        >
          ${say('orders.tryIt')}
        </button>
      </td>
    </tr>`
  }

  override updated(changed: PropertyValues): void {
    if (changed.has('session')) this._found = null
  }

  #start(): void {
    const { setUp } = this.session
    this._said = ''
    this.#study.start({ kind: 'changes', task: rankingOf(this.session).taskFor(setUp) }, (changes) => {
      this._found = { of: setUp, changes }
    })
  }
}

function changeWords({ kind, unit, by }: TriedChange, { inks }: SetUp): string {
  if (kind === 'swap') {
    const first = unit ?? 0
    return say('orders.change.swap', { ink: inks[first].name, other: inks[first + 1].name })
  }
  const values = { way: by > 0 ? 'up' : 'down', by: Math.abs(by) }
  return say(`orders.change.${kind}`, unit === null ? values : { ...values, ink: inks[unit].name })
}

/** What got better and what got worse, in points of percent. */
function effects({ differences }: TriedChange): string {
  const names = ['trap', 'contamination', 'picking'] as const
  const told = names
    .filter((name) => Math.abs(differences[name]) >= leastDifference)
    .map((name) => say(`orders.effort.${name}`, { by: signed(100 * differences[name], 1) }))
  return told.length > 0 ? told.join('; ') : say('orders.effort.none')
}

customElements.define('tack-what-to-change', WhatToChange)
