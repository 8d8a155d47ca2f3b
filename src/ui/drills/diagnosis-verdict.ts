/** What the diagnosis was worth. What the true cause is stays hidden until it is found or the answer is asked for. */
import { html, nothing } from 'lit'
import { causeKey } from '../../drill/cause.ts'
import type { Drill } from '../../drill/drill.ts'
import type { DiagnosisVerdict } from '../../drill/judge.ts'
import { causeSaid, evidenceSaid, misledSaid, quantitySpoken, reasonSaid } from '../../drill/said.ts'
import type { WorkVerdict } from '../../drill/work.ts'
import { KeptFocus } from '../kept-focus.ts'
import { say, sayList } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { DrillElement, saySaid } from './drill-element.ts'
import { drillStyles } from './drill-styles.ts'
import { isOfJob, placeWords } from './reading-table.ts'

export class DiagnosisVerdictView extends DrillElement {
  static override styles = [sharedStyles, drillStyles]

  constructor() {
    super()
    new KeptFocus(this)
  }

  override render() {
    const { drill, verdict, answerShown } = this.desk.state
    return html`<div aria-live="polite">
      ${drill && verdict?.diagnosis ? this.#verdict(drill, verdict, verdict.diagnosis, answerShown) : nothing}
    </div>`
  }

  #verdict(drill: Drill, { found, proven }: WorkVerdict, diagnosis: DiagnosisVerdict, answerShown: boolean) {
    const { right, wrong } = diagnosis
    return html`
      <div class="mark">
        ${right.map((cause) => html`<p>${say('drill.verdict.right', { cause: saySaid(causeSaid(drill, cause)) })}</p>`)}
        ${wrong.map((cause) => html`<p>${say('drill.verdict.wrong', { cause: saySaid(causeSaid(drill, cause)) })}</p>`)}
        ${found ? this.#proof(drill, diagnosis) : nothing} ${answerShown ? nothing : this.#wayOn(drill, diagnosis)}
      </div>
      ${
        proven || answerShown
          ? this.#answer(drill, diagnosis)
          : html`<p class="row">
              <span>${say('room.tryAgain')}</span>
              <button type="button" @click=${() => this.desk.showAnswer()}>${say('room.showAnswer')}</button>
            </p>`
      }
    `
  }

  /** What speaks against a wrong diagnosis, and where to look next. */
  #wayOn(drill: Drill, { wrong, against, next }: DiagnosisVerdict) {
    const open = wrong.length > 0 ? 'wrong' : 'open'
    const look = next
      ? say('drill.verdict.next', { open, evidence: saySaid(evidenceSaid(drill, next)) })
      : wrong.length > 0 && !against
        ? say('drill.verdict.measure')
        : ''
    return html`${
      against
        ? html`<p>
            ${say('drill.verdict.against', {
              evidence: saySaid(evidenceSaid(drill, against.quantity.evidence)),
              where: isOfJob(against.quantity) ? 'job' : 'place',
              place: placeWords(drill, against.quantity),
              quantity: saySaid(quantitySpoken(against.quantity)),
              would: against.would,
            })}
          </p>`
        : nothing
    }
    ${look === '' ? nothing : html`<p>${look}</p>`}`
  }

  #proof(drill: Drill, { leftOpen, needless }: DiagnosisVerdict) {
    const others = leftOpen.map((causes) => sayList(causes.map((cause) => saySaid(causeSaid(drill, cause)))))
    return html`<p>
        ${
          others.length === 0
            ? say('drill.verdict.proven')
            : say('drill.verdict.leftOpen', { count: others.length, cause: others[0] })
        }
      </p>
      ${
        needless.length > 0 && others.length === 0
          ? html`<p>
              ${say('drill.verdict.needless', {
                evidence: sayList(needless.map((piece) => saySaid(evidenceSaid(drill, piece)))),
              })}
            </p>`
          : nothing
      }`
  }

  #answer(drill: Drill, { missed, misled, enough }: DiagnosisVerdict) {
    return html`<h3 tabindex="-1">${say('room.answer')}</h3>
      ${drill.faults.map((fault) => {
        const cause = saySaid(causeSaid(drill, fault))
        const isMissed = missed.some((each) => causeKey(each) === causeKey(fault))
        return html`<p>
          ${isMissed ? say('drill.verdict.missed', { cause }) : `${cause}.`} ${saySaid(reasonSaid(fault))}
        </p>`
      })}
      <p>${say(misled ? 'room.misledYou' : 'room.theMisleading')} ${saySaid(misledSaid(drill))}</p>
      <p>
        ${say('drill.verdict.enough', {
          evidence: sayList(enough.map((piece) => saySaid(evidenceSaid(drill, piece)))),
        })}
      </p>`
  }
}

customElements.define('tack-diagnosis-verdict', DiagnosisVerdictView)
