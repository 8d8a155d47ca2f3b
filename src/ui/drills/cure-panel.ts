/** Putting it right: the cautions of a step come first, then the step, then what it did. */
import type { PropertyDeclarations } from 'lit'
import { html, nothing } from 'lit'
import { noticedDifference } from '../../drill/casebook.ts'
import type { Cure } from '../../drill/cure.ts'
import { cautionsOf, curesFor } from '../../drill/cure.ts'
import type { Drill } from '../../drill/drill.ts'
import type { CureVerdict } from '../../drill/judge.ts'
import { cureSaid } from '../../drill/said.ts'
import { KeptFocus } from '../kept-focus.ts'
import { say, sayList } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { cautionList } from './caution-list.ts'
import { DrillElement, saySaid } from './drill-element.ts'
import { drillStyles } from './drill-styles.ts'
import { effectTables } from './effect-tables.ts'

const kinds = { 'put right': 'room.cure.putRight', remedy: 'room.cure.workAround' } as const

export class CurePanel extends DrillElement {
  static override properties: PropertyDeclarations = {
    ...DrillElement.properties,
    drill: { attribute: false },
    _chosen: { state: true },
  }
  static override styles = [sharedStyles, tableStyles, drillStyles]

  declare drill: Drill
  /** place among the cures offered */
  declare _chosen: number | null

  constructor() {
    super()
    this._chosen = null
    new KeptFocus(this)
  }

  override render() {
    const { drill } = this
    const { work, verdict, judging } = this.desk.state
    if (!work.diagnosis)
      return html`<h2>${say('room.cure')}</h2>
        <p class="note">${say('room.cure.first')}</p>`
    const cures = curesFor(drill)
    const chosen = this._chosen === null ? undefined : cures[this._chosen]
    const done = judging === 'cure' ? undefined : verdict?.cure
    return html`
      <h2>${say('room.cure')}</h2>
      <p class="note">${say('room.cure.good', { noticed: noticedDifference })}</p>
      <label class="field"
        >${say('room.cure.choose')}
        <select @change=${this.#choose}>
          <option value="" ?selected=${this._chosen === null}>${say('room.cure.none')}</option>
          ${(['put right', 'remedy'] as const).map(
            (kind) =>
              html`<optgroup label=${say(kinds[kind])}>
                ${cures.map((cure, at) =>
                  cure.kind === kind
                    ? html`<option value=${at} ?selected=${this._chosen === at}>
                        ${saySaid(cureSaid(drill, cure))}
                      </option>`
                    : nothing,
                )}
              </optgroup>`,
          )}
        </select>
      </label>
      <div aria-live="polite">${chosen ? cautionList(cautionsOf(chosen)) : nothing}</div>
      <div class="row">
        <button
          type="button"
          ?disabled=${!chosen}
          aria-disabled=${judging !== null}
          @click=${() => chosen && judging === null && void this.desk.cure(chosen)}
        >
          ${say('room.cure.do')}
        </button>
        <button
          type="button"
          ?disabled=${work.cures.length === 0}
          aria-disabled=${judging !== null}
          @click=${() => judging === null && void this.desk.takeBackCure()}
        >
          ${say('room.cure.back')}
        </button>
      </div>
      <div aria-live="polite">
        ${judging === 'cure' ? say('room.judging') : done ? this.#verdict(work.cures, done) : nothing}
      </div>
      ${done ? effectTables(done.gains, done.sideEffects) : nothing}
    `
  }

  #choose(event: Event): void {
    const { value } = event.target as HTMLSelectElement
    this._chosen = value === '' ? null : Number(value)
  }

  #verdict(cures: readonly Cure[], verdict: CureVerdict) {
    const { before, after, back, worse, idle, atTheRoot } = verdict
    const colours = { before: before.colour, after: after.colour, colour: after.colour }
    const outcome = idle ? 'idle' : worse ? 'worse' : back ? 'back' : 'notBack'
    return html`<p>
        ${say('room.cure.done', { steps: sayList(cures.map((cure) => saySaid(cureSaid(this.drill, cure)))) })}
      </p>
      <p class="mark">
        ${say(`drill.cure.${outcome}`, colours)}
        ${atTheRoot ? say('drill.cure.atTheRoot') : back && !idle ? say('drill.cure.workAround') : nothing}
      </p>
      ${cures.map((cure) => (cure.kind === 'remedy' ? html`<p>${say(`remedy.${cure.remedy}.cost`)}</p>` : nothing))}`
  }
}

customElements.define('tack-cure-panel', CurePanel)
