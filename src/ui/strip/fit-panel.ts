/** The model fitted to a press sheet: what is set free, the search with its progress, and what came of it. */
import { css, html, nothing } from 'lit'
import type { FitParameter } from '../../measure/fit-parameter.ts'
import { boundsOf, fitParameters, parameterName, usualParameters, valueIn } from '../../measure/fit-parameter.ts'
import type { FitProgress } from '../../measure/fit-search.ts'
import type { PressSheet } from '../../measure/press-sheet.ts'
import { isRefused } from '../../measure/said.ts'
import { startFitting } from '../../session/fitting.ts'
import { KeptFocus } from '../kept-focus.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import './fit-result.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { told } from './told.ts'
import { unitOf } from './fit-unit.ts'

export class FitPanel extends StripElement {
  static override properties = {
    sheet: { attribute: false },
    _progress: { state: true },
  }
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      label {
        display: inline-flex;
        gap: 8px;
        align-items: center;
        min-height: 1.75rem;
      }
      input {
        flex: none;
      }
      tbody th {
        padding: 0;
        padding-inline-end: 12px;
      }
      td {
        vertical-align: middle;
      }
      @media (pointer: coarse) {
        label {
          min-height: 44px;
        }
      }
    `,
  ]

  declare sheet: PressSheet
  declare _progress: FitProgress | 'starting' | null
  #cancel: (() => void) | undefined

  constructor() {
    super()
    this._progress = null
    new KeptFocus(this)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#stop()
  }

  override willUpdate(changed: Map<string, unknown>): void {
    // Other readings: what is being found from the old ones will not hold.
    if (changed.has('sheet') && changed.get('sheet') !== undefined) this.#stop()
  }

  override render() {
    const { setUp } = this.session
    const free = this.#free()
    return html`
      <h3>${say('strip.fit')}</h3>
      <p>${linkedText(say('strip.fitIntro'))}</p>
      <div class="scroll" tabindex="0" role="region" aria-label=${say('strip.fitFree')}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say('strip.fitFree')}</th>
              <th scope="col">${say('strip.fitStart')}</th>
              <th scope="col">${say('strip.fitBounds')}</th>
            </tr>
          </thead>
          <tbody>
            ${fitParameters(setUp).map((parameter) => this.#parameter(parameter, free))}
          </tbody>
        </table>
      </div>
      <p class="note">${say('strip.fitNote')}</p>
      <div class="row">
        ${
          this._progress === null
            ? html`<button type="button" @click=${() => this.#start(free)}>${say('strip.fitGo')}</button>`
            : this.#running(this._progress)
        }
      </div>
      <div role="status">${this.#outcome()}</div>
    `
  }

  #outcome() {
    const { fit, status } = this.desk.state
    if (fit?.sheet !== this.sheet || fit.status !== status) return nothing
    const { result } = fit
    if (isRefused(result)) return html`<p class="mark">${linkedText(told(result.refused))}</p>`
    return html`<tack-fit-result .session=${this.session} .fit=${result}></tack-fit-result>`
  }

  #parameter(parameter: FitParameter, free: readonly FitParameter[]) {
    const { setUp } = this.session
    const { least, most } = boundsOf(parameter)
    const unit = unitOf(parameter)
    const key = keyOf(parameter)
    return html`<tr>
      <th scope="row">
        <label
          ><input
            type="checkbox"
            .checked=${free.some((each) => keyOf(each) === key)}
            @change=${() => this.#toggle(key, free)}
          />${told(parameterName(parameter, setUp))}</label
        >
      </th>
      <td>${sayNumber(valueIn(setUp, parameter), 0, 2)} ${unit}</td>
      <td>${say('strip.bounds', { least: sayNumber(least, 0, 2), most: sayNumber(most, 0, 2) })} ${unit}</td>
    </tr>`
  }

  #running(progress: FitProgress | 'starting') {
    if (progress === 'starting') {
      return html`<progress aria-label=${say('strip.fitting')}></progress>
        <span>${say('strip.fitting')}</span>${this.#cancelButton()}`
    }
    const { step, most, difference } = progress
    const text = say('strip.fitStep', { step, most, difference: sayNumber(difference, 3) })
    return html`<progress max=${most} .value=${step} aria-label=${text}></progress>
      <span>${text}</span>${this.#cancelButton()}`
  }

  #cancelButton() {
    return html`<button type="button" @click=${() => this.#stop()}>${say('bench.cancel')}</button>`
  }

  #free(): FitParameter[] {
    const { setUp } = this.session
    const { free } = this.desk.state
    if (!free) return usualParameters(setUp, this.sheet)
    return fitParameters(setUp).filter((parameter) => free.includes(keyOf(parameter)))
  }

  #toggle(key: string, free: readonly FitParameter[]): void {
    const keys = free.map(keyOf)
    this.desk.set({ free: keys.includes(key) ? keys.filter((each) => each !== key) : [...keys, key] })
  }

  #start(parameters: readonly FitParameter[]): void {
    this._progress = 'starting'
    const { sheet, session, desk } = this
    const { status } = desk.state
    desk.set({ fit: null })
    const task = { setUp: session.setUp, sheet, status, parameters }
    this.#cancel = startFitting(task, {
      step: (progress) => (this._progress = progress),
      done: (result) => {
        this._progress = null
        desk.set({ fit: { sheet, status, result } })
      },
    })
  }

  #stop(): void {
    this.#cancel?.()
    this.#cancel = undefined
    this._progress = null
  }
}

function keyOf({ kind, unit }: FitParameter): string {
  return `${kind} ${String(unit)}`
}

customElements.define('tack-fit-panel', FitPanel)
