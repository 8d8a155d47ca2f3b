/** What a fit found: the values and how well the readings decide them, what is left over, and the press to be kept and used. */
import { css, html, nothing } from 'lit'
import type { DensityFilter } from '../../colour/data/density-weights.ts'
import { densityFilters } from '../../colour/density.ts'
import type { Fit } from '../../measure/fit.ts'
import { parameterName } from '../../measure/fit-parameter.ts'
import { fittedPress } from '../../measure/fitted-press.ts'
import { putOnShelf, setUpWithPress } from '../../measure/shelf-change.ts'
import { unitsIn } from '../../press/patches.ts'
import { longestName } from '../../press/ranges.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { linkedText } from '../linked-text.ts'
import { sayProblem } from '../problem-words.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { unitOf } from './fit-unit.ts'
import { nameProblem } from './shelf-name.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { patchWords, told } from './told.ts'

/** Correlation of two values from which one can make up for the other. */
const entangled = 0.95

export class FitResult extends StripElement {
  static override properties = { fit: { attribute: false }, _said: { state: true }, _problem: { state: true } }
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      input {
        width: 15rem;
        max-width: 100%;
        padding: 0 8px;
      }
      label {
        display: grid;
        font-size: 0.875rem;
      }
    `,
  ]

  declare fit: Fit
  declare _said: string | null
  declare _problem: string | null

  constructor() {
    super()
    this._said = null
    this._problem = null
  }

  override willUpdate(changed: Map<string, unknown>): void {
    if (changed.has('fit')) this._said = this._problem = null
  }

  override render() {
    const { fit } = this
    return html`
      <h3>${say('strip.fitted')}</h3>
      <p>
        ${say('strip.fitDeviation', { deviation: sayNumber(fit.deviation, 3), steps: fit.steps, readings: fit.residuals.length })}
      </p>
      ${fit.cautions.map((caution) => html`<p class="mark">${linkedText(told(caution))}</p>`)} ${this.#values()}
      ${this.#entangled()}
      <details>
        <summary>${say('strip.residuals')}</summary>
        <p class="note">${say('strip.residualsNote')}</p>
        <div class="scroll" tabindex="0" role="region" aria-label=${say('strip.residuals')}>${this.#residuals()}</div>
      </details>
      <form class="row" @submit=${this.#use}>
        <label
          >${say('strip.pressName')}
          <input
            type="text"
            name="name"
            autocomplete="off"
            maxlength=${longestName}
            .value=${say('strip.pressNameUsual')}
            aria-describedby="problem"
            aria-invalid=${this._problem === null ? 'false' : 'true'}
        /></label>
        <button type="submit" ?disabled=${this.isClosed('kind')}>${say('strip.usePress')}</button>
      </form>
      <p id="problem" class=${this._problem === null ? '' : 'mark'} role="status">
        ${this._problem ?? this._said ?? nothing}
      </p>
    `
  }

  #values() {
    const { values, task } = this.fit
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('strip.fitted')}>
      <table>
        <thead>
          <tr>
            <th scope="col">${say('strip.fitValue')}</th>
            <th scope="col">${say('strip.fitStart')}</th>
            <th scope="col">${say('strip.fitFound')}</th>
            <th scope="col">${say('strip.fitError')}</th>
            <th scope="col">${say('strip.fitDecided')}</th>
          </tr>
        </thead>
        <tbody>
          ${values.map(
            (value) =>
              html`<tr>
                <th scope="row">${told(parameterName(value, task.setUp))}</th>
                <td>${sayNumber(value.start, 2)}</td>
                <td>${sayNumber(value.value, 2)} ${unitOf(value)}</td>
                <td>± ${sayNumber(value.standardError, 2, 3)}</td>
                <td>${say(`strip.decided.${value.decided}`)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`
  }

  /** Pairs of values that the readings cannot tell apart well. */
  #entangled() {
    const { values, certainty, task } = this.fit
    const name = (at: number) => told(parameterName(values[at], task.setUp))
    const pairs = values.flatMap((_, i) =>
      values.slice(0, i).flatMap((__, j) => (Math.abs(certainty.correlations[i][j]) >= entangled ? [[j, i]] : [])),
    )
    return pairs.map(
      ([first, second]) =>
        html`<p class="note">${say('strip.entangled', { first: name(first), second: name(second) })}</p>`,
    )
  }

  #residuals() {
    const { residuals, task } = this.fit
    const inks = task.sheet.inks
    return html`<table>
      <thead>
        <tr>
          <th scope="col">${say('strip.patch')}</th>
          ${densityFilters.map((filter) => html`<th scope="col">${say(`strip.filter.${filter}`)}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${task.sheet.patches.map(
          ({ patch }) =>
            html`<tr>
              <th scope="row">${patchWords(unitsIn(patch, inks.length), inks)}</th>
              ${densityFilters.map((filter: DensityFilter) => {
                const residual = residuals.find((each) => each.patch === patch && each.filter === filter)
                if (!residual) return html`<td></td>`
                const { read, computed } = residual
                return html`<td>
                  ${say('strip.residual', {
                    read: sayNumber(read, 2),
                    computed: sayNumber(computed, 2),
                    off: signed(read - computed),
                  })}
                </td>`
              })}
            </tr>`,
        )}
      </tbody>
    </table>`
  }

  /** Puts the press on the shelf and sets it up, which the bench can undo. */
  readonly #use = (event: Event): void => {
    event.preventDefault()
    const typed = new FormData(event.target as HTMLFormElement).get('name')
    const name = typeof typed === 'string' ? typed.trim() : ''
    this._said = null
    this._problem = nameProblem(name)
    if (this._problem !== null) return
    const press = fittedPress(this.fit, name)
    const checked = setUpWithPress(this.session.setUp, press)
    this._problem =
      'problems' in checked
        ? sayProblem(checked.problems[0])
        : this.attempt({ kind: 'load', given: writeSetUp(checked.setUp) })
    if (this._problem !== null) return
    this.desk.set({ shelf: putOnShelf(this.desk.state.shelf, { presses: [press] }).shelf })
    this._said = say('strip.pressInUse', { name })
  }
}

function signed(value: number): string {
  const text = sayNumber(Math.abs(value), 2)
  return `${value < 0 ? '−' : '+'}${text}`
}

customElements.define('tack-fit-result', FitResult)
