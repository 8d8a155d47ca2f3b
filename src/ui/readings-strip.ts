/** What is read off the sheet, large: mass trap of each pair, and film, lifting, picking and contamination at the unit looked at. */
import type { PropertyDeclarations, TemplateResult } from 'lit'
import { css, html, nothing } from 'lit'
import { printsIn } from '../press/patches.ts'
import { liftedShares } from '../press/readings.ts'
import { inkLetters } from '../session/letters.ts'
import { toShown } from '../session/measures.ts'
import { inkDensity } from '../session/unit-names.ts'
import { linkedText } from './linked-text.ts'
import './measure-choice.ts'
import './panel-button.ts'
import { say, sayNumber, sayPercent } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import './share-bar.ts'

/** With more inks than this, only the pairs of the unit looked at are shown here; all are in the table of readings. */
const inksWithAllPairs = 4

export class ReadingsStrip extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, wraps: { type: Boolean } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 24px;
        align-items: flex-start;
      }
      dl {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
      }
      .title {
        display: flex;
        flex-wrap: wrap;
        gap: 0 8px;
        align-items: center;
        justify-content: space-between;
      }
      h3 {
        color: var(--soft);
        font-size: 0.875rem;
        font-weight: 400;
        line-height: 1.5rem;
      }
      dt {
        font-size: 0.875rem;
        line-height: 1.125rem;
        white-space: nowrap;
      }
      dd {
        font-size: var(--reading);
        font-weight: 600;
        line-height: 1.875rem;
        white-space: nowrap;
      }
      tack-measure-choice {
        display: inline-block;
        vertical-align: 3px;
        line-height: 1.25rem;
      }
      dd small {
        font-size: 1rem;
        font-weight: 400;
        /* Or it would make its line higher than those beside it. */
        line-height: 1;
      }
      /* On one screen nothing may grow by a line from nip to nip, as the pictures would jump. */
      @media (min-width: 68.75em) and (min-height: 43.75em) {
        :host(:not([wraps])) {
          display: grid;
          grid-template-columns: minmax(10rem, auto) auto;
          justify-content: start;
          overflow: auto;
        }
        :host(:not([wraps])) .traps {
          flex-wrap: nowrap;
          justify-content: space-between;
          gap: 4px 8px;
        }
        :host(:not([wraps])) section:last-child dl {
          flex-wrap: nowrap;
        }
        :host(:not([wraps])) .title {
          flex-wrap: nowrap;
        }
      }
      /* Beside a lesson readings come one by one, each to a place that was kept for it. */
      @container results (min-width: 30rem) {
        :host([wraps]) {
          gap: 8px 12px;
        }
        :host([wraps]) .nip {
          display: grid;
          grid-template-columns: minmax(9.375rem, auto) 5rem 5.25rem minmax(5.5rem, auto);
          gap: 4px 12px;
        }
        :host([wraps]) dd {
          font-size: 1.25rem;
        }
        :host([wraps]) .title {
          margin-block-end: 6px;
        }
        :host([wraps]) .nip [hidden] {
          display: block;
          visibility: hidden;
        }
      }
      dd .note {
        display: block;
        font-weight: 400;
        line-height: 1rem;
      }
    `,
  ]

  /** beside a lesson, where the readings of the nip stand first and pairs of inks find their place below or beside */
  declare wraps: boolean

  constructor() {
    super()
    this.wraps = false
  }

  override render() {
    const knowsTraps = this.knows('mass-trap')
    const button = html`<tack-panel-button .session=${this.session} .panel=${'readings'}></tack-panel-button>`
    const traps = knowsTraps ? html`<dl class="traps">${this.#traps()}</dl>` : nothing
    if (this.wraps) {
      const isOne = this.session.results.readings.traps.length === 1
      const head = isOne ? 'bench.massTrapHeadOne' : 'bench.massTrapHead'
      return html`${this.#nip(button)}
      ${
        knowsTraps
          ? html`<section>
              <h3>${linkedText(say(head))}</h3>
              ${traps}
            </section>`
          : nothing
      }`
    }
    return html`
      <section>
        <div class="title">
          ${knowsTraps ? html`<h3>${linkedText(say('bench.massTrapHead'))}</h3>` : nothing} ${button}
        </div>
        ${traps}
      </section>
      ${this.#nip()}
    `
  }

  #traps() {
    const { setUp, results, playback } = this.session
    const names = setUp.inks.map((ink) => ink.name)
    const letters = inkLetters(names)
    const { traps } = results.readings
    const shown = names.length <= inksWithAllPairs ? traps : traps.filter(({ later }) => later === playback.unit)
    if (shown.length === 0) return html`<div><dt>${say('bench.noPair')}</dt></div>`
    return shown.map(
      ({ earlier, later, massTrap }) =>
        html`<div>
          <dt>
            <span aria-hidden="true" title=${say('bench.pairOf', { later: names[later], earlier: names[earlier] })}
              >${say('bench.pair', { later: letters[later], earlier: letters[earlier] })}</span
            >
            <span class="unseen">${say('bench.pairOf', { later: names[later], earlier: names[earlier] })}</span>
          </dt>
          <dd title=${massTrap > 1 ? say('bench.trapAboveAll') : nothing}>
            ${percent(massTrap, 0)}<tack-share-bar .share=${massTrap}></tack-share-bar>
          </dd>
        </div>`,
    )
  }

  #nip(button: TemplateResult | typeof nothing = nothing) {
    const { setUp, results, playback, patch, look } = this.session
    const { unit } = playback
    const { name } = setUp.inks[unit]
    const account = results.accounts(patch)[unit]
    const { readings } = results
    const film = toShown(readings.films[patch][unit], look.measures.film)
    const lifted = liftedShares(account)
    // A trace of an ink that does not print here is no film of which a share could be lifted.
    const below = [...lifted.keys()].filter((ink) => printsIn(patch, ink))
    const most = below.reduce((so, ink) => (lifted[ink] > (lifted[so] ?? 0) ? ink : so), below.at(0) ?? -1)
    const of = most < 0 ? say('bench.nothingBelow') : say('bench.ofInk', { name: setUp.inks[most].name })
    return html`<section>
      <div class="title">
        <h3>${say('bench.atUnit', { unit: unit + 1, name })}</h3>
        ${button}
      </div>
      <dl class="nip">
        <div>
          <dt>${linkedText(say('bench.filmLeft'))}</dt>
          <dd>
            ${sayNumber(film, 2)}
            <tack-measure-choice .session=${this.session} .quantity=${'film'}></tack-measure-choice>
            <span class="note">${this.#weighed(name)}</span>
          </dd>
        </div>
        <div ?hidden=${!this.knows('lifting')}>
          <dt>${linkedText(say('bench.liftedHead'))}</dt>
          <dd>${percent(most < 0 ? 0 : lifted[most])}<span class="note">${of}</span></dd>
        </div>
        <div ?hidden=${!this.knows('picking')}>
          <dt>${linkedText(say('bench.pickedHead'))}</dt>
          <dd>${percent(readings.torn[patch])}<span class="note">${say('bench.ofPatch')}</span></dd>
        </div>
        <div ?hidden=${!this.knows('contamination')}>
          <dt>${linkedText(say('bench.contaminationHead'))}</dt>
          <dd>
            ${sayNumber(100 * readings.contamination[unit], 1)} <small>%</small>
            <span class="note">${say('bench.modelsIndex')}</span>
          </dd>
        </div>
      </dl>
    </section>`
  }

  /** A film told by its weight needs the density that was assumed. */
  #weighed(name: string): string {
    if (this.session.look.measures.film.unit === 'um') return say('bench.ofInk', { name })
    return say('bench.ofInkByWeight', { name, density: inkDensity })
  }
}

/** Figure large, percent sign small. */
function percent(share: number, decimals?: number) {
  const text =
    decimals === undefined ? sayPercent(share) : say('bench.percent', { value: sayNumber(100 * share, decimals) })
  const figure = text.replace(/\s*%$/, '')
  return html`${figure} <small>%</small>`
}

customElements.define('tack-readings-strip', ReadingsStrip)
