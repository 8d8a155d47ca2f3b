/** One lesson step by step: how many came how far, and the wrong answers given, the commonest first. */
import { LitElement, css, html, nothing } from 'lit'
import type { StepCount, WrongCount } from '../../class/count-lessons.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import { stepsTable } from '../../report/class-tables.ts'
import { proseView } from '../lessons/prose-view.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { answerWords } from './answer-words.ts'
import { boardStyles } from './board-styles.ts'
import './class-table.ts'

/** Wrong answers of a step that are shown; the rarer ones are only counted. */
const mostShown = 6

export class StepPanel extends LitElement {
  static override properties = {
    heading: {},
    lesson: { attribute: false },
    steps: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    boardStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
      }
      h4 {
        margin: 8px 0 4px;
        font-size: 1rem;
      }
      li {
        margin: 4px 0;
        padding: 4px 12px;
        border-inline-start: 4px solid var(--line);
      }
      .told {
        color: var(--soft);
        font-size: 0.9375rem;
      }
    `,
  ]

  /** title of the lesson */
  declare heading: string
  /** undefined where this page does not have the lesson */
  declare lesson: Lesson | undefined
  declare steps: readonly StepCount[]

  override render() {
    const { heading, steps } = this
    const title = say('board.steps', { title: heading })
    const wrong = steps.filter((step) => step.wrong.length > 0)
    return html`
      <h3>${title}</h3>
      <tack-class-table
        .label=${title}
        .file=${'tackstair-steps'}
        .table=${stepsTable(steps, (step) => this.#nameOf(step), say)}
        .bars=${[3]}
      ></tack-class-table>
      <h3>${say('board.wrong')}</h3>
      ${wrong.length === 0 ? html`<p>${say('board.wrongNone')}</p>` : wrong.map((step) => this.#answers(step))}
    `
  }

  #answers(step: StepCount) {
    const rest = step.wrong.length - mostShown
    return html`<h4>${this.#nameOf(step)}</h4>
      <ul>
        ${step.wrong.slice(0, mostShown).map((answer) => this.#answer(step.id, answer))}
        ${rest > 0 ? html`<li class="note">${say('board.wrongRest', { count: rest })}</li>` : nothing}
      </ul>`
  }

  #answer(step: string, answer: WrongCount) {
    const { words, feedback } = answerWords(this.lesson, step, answer)
    return html`<li>
      <p><strong>${say('board.wrongBy', { count: answer.learners })}</strong>: ${words}</p>
      ${
        feedback.length === 0
          ? html`<p class="told">${say('board.noFeedback')}</p>`
          : html`<div class="told">
              <p>${say('board.feedback')}</p>
              ${feedback.map((each) => proseView(each))}
            </div>`
      }
    </li>`
  }

  #nameOf({ id, kind }: StepCount): string {
    const number = this.steps.findIndex((step) => step.id === id) + 1
    return say('board.stepName', { number, kind: say(`lessons.stepKind.${kind}`), id })
  }
}

customElements.define('tack-step-panel', StepPanel)
