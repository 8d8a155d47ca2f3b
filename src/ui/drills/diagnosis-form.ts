/** Naming the cause, and the evidence that proves it. */
import type { PropertyDeclarations, PropertyValues } from 'lit'
import { css, html } from 'lit'
import type { Cause } from '../../drill/cause.ts'
import { causeKey } from '../../drill/cause.ts'
import type { Drill } from '../../drill/drill.ts'
import type { Evidence } from '../../drill/evidence.ts'
import { evidenceKey } from '../../drill/evidence.ts'
import { causeSaid, evidenceSaid } from '../../drill/said.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { DrillElement, saySaid } from './drill-element.ts'
import { drillStyles } from './drill-styles.ts'

export class DiagnosisForm extends DrillElement {
  static override properties: PropertyDeclarations = {
    ...DrillElement.properties,
    drill: { attribute: false },
    _causes: { state: true },
    _proof: { state: true },
    _problem: { state: true },
  }
  static override styles = [
    sharedStyles,
    drillStyles,
    css`
      form {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 18.75rem), 1fr));
        gap: 8px 24px;
        margin-top: 4px;
      }
      .row {
        grid-column: 1 / -1;
      }
    `,
  ]

  declare drill: Drill
  /** keys of the causes and of the evidence chosen */
  declare _causes: readonly string[]
  declare _proof: readonly string[]
  declare _problem: string

  constructor() {
    super()
    this._causes = []
    this._proof = []
    this._problem = ''
  }

  override willUpdate(changed: PropertyValues): void {
    if (!changed.has('drill')) return
    this._causes = []
    this._proof = []
    this._problem = ''
  }

  override render() {
    const { drill } = this
    const count = drill.faults.length
    const { work, judging } = this.desk.state
    const { taken } = work
    return html`
      <h2>${say('room.diagnose')}</h2>
      <form @submit=${this.#submit}>
        <fieldset>
          <legend>${say('room.cause', { count })}</legend>
          ${drill.offered.map((cause) => this.#cause(cause, count))}
        </fieldset>
        <fieldset>
          <legend>${say('room.proof')}</legend>
          <p class="note">${say('room.proof.none')}</p>
          ${taken.map(({ evidence }) => this.#piece(evidence))}
        </fieldset>
        <div class="row">
          <button type="submit" aria-disabled=${judging !== null}>${say('room.name')}</button>
          <p aria-live="polite">${judging === 'diagnosis' ? say('room.judging') : this._problem}</p>
        </div>
      </form>
    `
  }

  #cause(cause: Cause, count: number) {
    const key = causeKey(cause)
    return html`<label class="pick"
      ><input
        type=${count === 1 ? 'radio' : 'checkbox'}
        name="cause"
        .checked=${this._causes.includes(key)}
        @change=${(event: Event) => {
          const { checked } = event.target as HTMLInputElement
          this._causes = count === 1 ? [key] : switched(this._causes, key, checked)
        }}
      />${saySaid(causeSaid(this.drill, cause))}</label
    >`
  }

  #piece(evidence: Evidence) {
    const key = evidenceKey(evidence)
    return html`<label class="pick"
      ><input
        type="checkbox"
        .checked=${this._proof.includes(key)}
        @change=${(event: Event) => {
          this._proof = switched(this._proof, key, (event.target as HTMLInputElement).checked)
        }}
      />${saySaid(evidenceSaid(this.drill, evidence))}</label
    >`
  }

  #submit(event: Event): void {
    event.preventDefault()
    if (this.desk.state.judging) return
    const { drill } = this
    const count = drill.faults.length
    const causes = drill.offered.filter((cause) => this._causes.includes(causeKey(cause)))
    const taken = this.desk.state.work.taken.map(({ evidence }) => evidence)
    const proof = taken.filter((evidence) => this._proof.includes(evidenceKey(evidence)))
    const problem =
      causes.length !== count ? say('room.needCauses', { count }) : proof.length === 0 ? say('room.needProof') : ''
    // The same words once more are read only where they have been away.
    this._problem = ''
    if (problem === '') void this.desk.name(causes, proof)
    else void this.updateComplete.then(() => (this._problem = problem))
  }
}

function switched(keys: readonly string[], key: string, on: boolean): string[] {
  const others = keys.filter((each) => each !== key)
  return on ? [...others, key] : others
}

customElements.define('tack-diagnosis-form', DiagnosisForm)
