/** The wet-on-wet proof: two of the loaded inks on one strip, in either order, weighed at every step. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import { repeatability } from '../../physics/repeatability.ts'
import type { Proof } from '../../press/proof.ts'
import { proofRanges } from '../../press/proof.ts'
import { linkedText } from '../linked-text.ts'
import '../number-field.ts'
import { say, sayName } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { PrintedProof } from './proof-result.ts'
import { printed, weighedOnce } from './proof-result.ts'
import './proof-result.ts'
import { RigElement } from './rig-element.ts'
import { rigStyles } from './rig-styles.ts'

const places = ['first', 'second'] as const
const dials = ['interval', 'speed', 'temperature'] as const
const units = { interval: 's', speed: 'm/s', temperature: '°C' } as const
const decimals = { interval: 2, speed: 1, temperature: 1 } as const

export class ProofRig extends RigElement {
  static override properties: PropertyDeclarations = {
    ...RigElement.properties,
    _inks: { state: true },
    _films: { state: true },
    _set: { state: true },
    _results: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    rigStyles,
    css`
      .results {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 26.25rem), 1fr));
        gap: 8px 32px;
        margin-top: 8px;
      }
    `,
  ]

  /** units of the two inks */
  declare _inks: readonly [number, number]
  /** um on each one's forme */
  declare _films: readonly [number, number]
  declare _set: Pick<Proof, 'interval' | 'speed' | 'temperature'>
  declare _results: readonly PrintedProof[]
  declare _said: string

  constructor() {
    super()
    this._inks = [0, 1]
    // As blankets bring them (um, m/s, s, degC): a usual sheet-fed press.
    this._films = [2, 2]
    this._set = { interval: 0.45, speed: 2, temperature: 25 }
    this._results = []
    this._said = ''
  }

  override render() {
    const same = this._inks[0] === this._inks[1]
    return html`
      <p>${linkedText(say('proof.what'))}</p>
      <div class="row">
        ${places.map((place, at) => this.#ink(place, at))}
        ${dials.map(
          (dial) =>
            html`<tack-number-field
              .label=${say(`rig.proof.${dial}`)}
              .unit=${units[dial]}
              .least=${proofRanges[dial].least}
              .most=${proofRanges[dial].most}
              .step=${proofRanges[dial].step}
              .decimals=${decimals[dial]}
              .value=${this._set[dial]}
              .offer=${(value: number | null) => {
                this._set = { ...this._set, [dial]: value ?? this._set[dial] }
                return null
              }}
            ></tack-number-field>`,
        )}
      </div>
      <div class="row">
        <button type="button" ?disabled=${same} @click=${() => this.#print(false)}>${say('rig.proof.print')}</button>
        <button type="button" ?disabled=${same} @click=${() => this.#print(true)}>${say('proof.swap')}</button>
        <button type="button" ?disabled=${this._results.length === 0} @click=${() => this.#weighAgain()}>
          ${say('rig.proof.again')}
        </button>
        <p aria-live="polite">${same ? say('rig.proof.same') : this._said}</p>
      </div>
      ${
        this._results.length === 0
          ? html`<p class="note">${say('rig.proof.none')}</p>`
          : html`<p class="note">
                ${say('rig.proof.weighings', {
                  count: this._results[0].weighings.length,
                  deviation: repeatability.weighing,
                })}
              </p>
              <div class="results">
                ${this._results.map(
                  (result) =>
                    html`<tack-proof-result
                      .result=${result}
                      .stale=${!this.#isPresent(result)}
                      .colours=${result.proof.inks.map(({ name }) => this.#colourOf(name))}
                    ></tack-proof-result>`,
                )}
              </div>
              <p class="mark">${say('proof.limit')}</p>`
      }
    `
  }

  #ink(place: (typeof places)[number], at: number) {
    const { inks } = this.session.setUp
    return html`<label class="field"
        >${say(`rig.proof.${place}`)}
        <select
          @change=${(event: Event) => {
            this._inks = this._inks.with(at, Number((event.target as HTMLSelectElement).value)) as [number, number]
          }}
        >
          ${inks.map(
            ({ name }, unit) =>
              html`<option value=${unit} ?selected=${unit === this._inks[at]}>${sayName(name)}</option>`,
          )}
        </select>
      </label>
      <tack-number-field
        .label=${say(`rig.proof.film.${place}`)}
        .unit=${'µm'}
        .least=${proofRanges.film.least}
        .most=${proofRanges.film.most}
        .step=${proofRanges.film.step}
        .decimals=${1}
        .value=${this._films[at]}
        .offer=${(value: number | null) => {
          this._films = this._films.with(at, value ?? this._films[at]) as [number, number]
          return null
        }}
      ></tack-number-field>`
  }

  /** The proof as it is set now, its inks in the order chosen or the other way round. */
  #proof(swapped: boolean): Proof {
    const { setUp } = this.session
    const [one, other] = this._inks.map((unit, at) => {
      const { name, tack } = setUp.inks[Math.min(unit, setUp.inks.length - 1)]
      return { name, tack, film: this._films[at] }
    })
    return { inks: swapped ? [other, one] : [one, other], paper: setUp.paper, ...this._set }
  }

  #isPresent({ proof }: PrintedProof): boolean {
    const text = JSON.stringify(proof)
    return [false, true].some((swapped) => JSON.stringify(this.#proof(swapped)) === text)
  }

  #colourOf(name: string): string {
    const at = this.session.setUp.inks.findIndex((ink) => ink.name === name)
    return this.session.colours.solids[at] ?? '#8c8c8c'
  }

  #print(swapped: boolean): void {
    const result = printed(this.#proof(swapped), this.session.setUp.seed, this.nextTaken())
    const others = this._results.filter((each) => this.#isPresent(each) && !sameOrder(each, result))
    this._results = swapped ? [...others, result] : [result, ...others]
    this._said = result.words
  }

  #weighAgain(): void {
    const seed = this.session.setUp.seed
    this._results = this._results.map((result) => weighedOnce(result, seed, this.nextTaken()))
    this._said = this._results.map(({ words }) => words).join(' ')
  }
}

function sameOrder(one: PrintedProof, other: PrintedProof): boolean {
  return one.proof.inks[0].name === other.proof.inks[0].name
}

customElements.define('tack-proof-rig', ProofRig)
