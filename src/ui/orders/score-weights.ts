/** What the score counts: a weight for each term, and the overprints whose trap counts. */
import { css, html, nothing } from 'lit'
import { aimedColours } from '../../measure/order-colours.ts'
import type { OrderTerms } from '../../press/order-score.ts'
import { allPairs, termNames, usualWeights } from '../../press/order-score.ts'
import '../number-field.ts'
import { say, sayName } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { ordersStyles } from './orders-styles.ts'
import { RankingElement } from './ranking-element.ts'

/** A field's number is the points for so much of the term: 1 % of trap or contamination, 0.1 % torn, 1 dE00. */
const perField: Record<keyof OrderTerms, number> = { trap: 0.01, contamination: 0.01, picking: 0.001, colour: 1 }
const mostPoints = 100

export class ScoreWeights extends RankingElement {
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 15rem), 1fr));
        gap: 8px 16px;
        margin-top: 8px;
      }
    `,
  ]

  override render() {
    const { ranking, session } = this
    const coloured = aimedColours(session.setUp) !== undefined
    return html`
      <details>
        <summary><h3>${say('orders.weights')}</h3></summary>
        <p>${say('orders.weightsIntro')}</p>
        <div class="fields">
          ${termNames.map(
            (name) =>
              html`<tack-number-field
                .label=${say(`orders.weight.${name}`)}
                .unit=${say('orders.points')}
                .least=${0}
                .most=${mostPoints}
                .step=${0.5}
                .value=${ranking.weights[name] * perField[name]}
                .offer=${(points: number) => this.#weigh(name, points)}
              ></tack-number-field>`,
          )}
        </div>
        ${coloured ? nothing : html`<p class="note">${say('orders.noColour')}</p>`}
        <div class="row">
          <button type="button" @click=${() => ranking.weighBy(usualWeights)}>${say('orders.usualWeights')}</button>
        </div>
        ${this.#overprints()}
      </details>
    `
  }

  #overprints() {
    const { inks } = this.session.setUp
    const pairs = allPairs(inks.length).map((places) => places.map((place) => inks[place].name))
    const chosen = this.ranking.overprints
    return html`<fieldset>
      <legend>${say('orders.overprints')}</legend>
      <p class="note">${say('orders.overprintsNote')}</p>
      <div class="row">
        ${pairs.map((names) => {
          const counts = !chosen || chosen.some((each) => same(each, names))
          return html`<label class="check"
            ><input
              type="checkbox"
              .checked=${counts}
              ?disabled=${counts && chosen?.length === 1}
              @change=${() => this.#toggle(names, pairs)}
            />${names.map(sayName).join(' + ')}</label
          >`
        })}
      </div>
    </fieldset>`
  }

  #toggle(names: readonly string[], pairs: readonly string[][]): void {
    const chosen = this.ranking.overprints ?? pairs
    const others = chosen.filter((each) => !same(each, names))
    this.ranking.overprints = others.length < chosen.length ? others : [...others, names]
    this.requestUpdate()
  }

  #weigh(name: keyof OrderTerms, points: number): null {
    this.ranking.weighBy({ ...this.ranking.weights, [name]: points / perField[name] })
    return null
  }
}

/** Whether two overprints are of the same inks, however these stand in the press now. */
function same(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((name) => b.includes(name))
}

customElements.define('tack-score-weights', ScoreWeights)
