/** Practice: the learner types a trap equation with D1, D2 and D3; it is judged by what it gives, not by how it is written. */
import { css, html, nothing } from 'lit'
import type { FormulaVerdict } from '../../measure/formula-practice.ts'
import type { TrapEquation } from '../../measure/trap-equations.ts'
import { trapEquations } from '../../measure/trap-equations.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import '../formula.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { told } from './told.ts'

export class FormulaPractice extends StripElement {
  static override properties = {
    _equation: { state: true },
    _verdict: { state: true },
    _answer: { state: true },
  }
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      form {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: end;
        margin-top: 12px;
      }
      label {
        flex: 1 1 17.5rem;
        max-width: 30rem;
      }
      input {
        display: block;
        width: 100%;
        min-height: 2.25rem;
        padding: 0 8px;
        font-size: 1.0625rem;
      }
      tack-formula {
        max-width: 30rem;
      }
      ul {
        margin-top: 8px;
        padding-inline-start: 20px;
        list-style: disc;
      }
    `,
  ]

  declare _equation: TrapEquation
  declare _verdict: FormulaVerdict | null
  /** TeX of the true equation, once it has been asked for */
  declare _answer: string | null
  /** tries so far: each is judged on other cases */
  #tries = 0

  constructor() {
    super()
    this._equation = 'preucil'
    this._verdict = null
    this._answer = null
  }

  override render() {
    return html`
      <h2>${say('strip.practice')}</h2>
      <p>${linkedText(say('strip.practiceTask'))}</p>
      <ul>
        <li>${linkedText(say('strip.practiceD1'))}</li>
        <li>${linkedText(say('strip.practiceD2'))}</li>
        <li>${linkedText(say('strip.practiceD3'))}</li>
      </ul>
      <div class="row">
        <tack-choice
          drawLegend
          .legend=${say('strip.practiceOf')}
          .options=${trapEquations.map((value) => ({ value, label: say(`strip.name.${value}`) }))}
          .value=${this._equation}
          @choose=${this.#choose}
        ></tack-choice>
      </div>
      <p>${linkedText(say(`strip.idea.${this._equation}`))}</p>
      <form @submit=${this.#judge}>
        <label
          >${say('strip.practiceInput')}
          <input
            type="text"
            name="formula"
            autocomplete="off"
            autocapitalize="off"
            spellcheck="false"
            aria-describedby="allowed"
            aria-invalid=${this._verdict?.kind === 'not read' ? 'true' : 'false'}
          />
        </label>
        <button type="submit">${say('strip.practiceCheck')}</button>
        <button type="button" class="plain" @click=${this.#show}>${say('strip.practiceShow')}</button>
      </form>
      <p class="note" id="allowed">${say('strip.practiceAllowed')}</p>
      <div role="status">${this._verdict ? this.#verdict(this._verdict) : nothing}</div>
      ${
        this._answer === null
          ? nothing
          : html`<h3>${say('strip.practiceAnswer')}</h3>
              <tack-formula .tex=${this._answer}></tack-formula>`
      }
    `
  }

  #verdict(verdict: FormulaVerdict) {
    if (verdict.kind === 'not read') return html`<p class="mark">${linkedText(told(verdict.problem))}</p>`
    return html`<p><strong>${say(`strip.verdict.${verdict.kind}`)}</strong></p>
      <p>${say('strip.understood')}</p>
      <tack-formula .tex=${verdict.tex}></tack-formula>
      ${verdict.kind === 'wrong' ? this.#wrong(verdict) : nothing}`
  }

  #wrong({ slip, example }: Extract<FormulaVerdict, { kind: 'wrong' }>) {
    const { D1, D2, D3, typed, wanted } = example
    const case_ = { D1: sayNumber(D1, 2), D2: sayNumber(D2, 2), D3: sayNumber(D3, 2), wanted: sayNumber(wanted, 1) }
    return html`<p class="mark">${linkedText(slip ? told(slip) : say('strip.noSlip'))}</p>
      <p>
        ${
          typed === null
            ? say('strip.exampleNone', case_)
            : say('strip.example', { ...case_, typed: sayNumber(typed, 1, 3) })
        }
      </p>`
  }

  readonly #choose = ({ value }: ChooseEvent): void => {
    this._equation = value as TrapEquation
    this._verdict = null
    this._answer = null
  }

  readonly #judge = (event: Event): void => {
    event.preventDefault()
    const text = new FormData(event.target as HTMLFormElement).get('formula')
    void this.#judgeText(typeof text === 'string' ? text : '')
  }

  /** The algebra library is fetched when the first formula is judged. */
  async #judgeText(text: string): Promise<void> {
    const { judgeFormula } = await import('../../measure/formula-practice.ts')
    this.#tries += 1
    this._verdict = judgeFormula(text, this._equation, this.#tries)
  }

  readonly #show = async (): Promise<void> => {
    const { texOf, trapTree } = await import('../../measure/trap-formula.ts')
    this._answer = texOf(trapTree(this._equation))
  }
}

customElements.define('tack-formula-practice', FormulaPractice)
