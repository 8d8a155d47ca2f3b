/** An exercise at the tackmeter: what is asked, the answer, and whether it was right. */
import type { PropertyDeclarations, PropertyValues } from 'lit'
import { css, html } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import type { TackExercise } from '../../drill/tack-exercise.ts'
import { judgeTackExercise } from '../../drill/tack-exercise.ts'
import { laboratoryTackmeter, speedFor } from '../../physics/tackmeter.ts'
import { moved } from '../../session/order.ts'
import '../number-field.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { RigElement } from './rig-element.ts'
import { rigStyles } from './rig-styles.ts'
import type { Sample } from './samples.ts'

/** What an answer may be on the laboratory scale, at any condition that can be dialled. */
const answers = { least: 0, most: 100, step: 0.1 } as const

export class ExercisePanel extends RigElement {
  static override properties: PropertyDeclarations = {
    ...RigElement.properties,
    exercise: { attribute: false },
    samples: { attribute: false },
    _answer: { state: true },
    _order: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    rigStyles,
    css`
      ol {
        max-width: 20rem;
        margin-top: 4px;
      }
      li {
        display: flex;
        gap: 8px;
        align-items: center;
        padding: 4px 8px;
        border: 1px solid var(--line);
        background: var(--field);
      }
      li + li {
        border-top: 0;
      }
      li span {
        flex: 1;
      }
    `,
  ]

  declare exercise: TackExercise
  declare samples: readonly Sample[]
  declare _answer: number | null
  declare _order: readonly number[]
  declare _said: string
  #refocus: string | null = null

  constructor() {
    super()
    this.samples = []
    this._answer = null
    this._order = []
    this._said = ''
  }

  override willUpdate(changed: PropertyValues): void {
    if (!changed.has('exercise')) return
    this._answer = null
    this._said = ''
    this._order = this.exercise.inks.map((_, at) => at)
  }

  override updated(): void {
    if (this.#refocus === null) return
    const wanted = this.renderRoot.querySelector<HTMLButtonElement>(`[data-move="${this.#refocus}"]`)
    const other = this.renderRoot.querySelector<HTMLButtonElement>(
      `[data-move^="${this.#refocus.split(' ')[0]} "]:enabled`,
    )
    ;(wanted?.disabled === false ? wanted : other)?.focus()
    this.#refocus = null
  }

  override render() {
    const { exercise } = this
    return html`
      <p class="mark">
        ${
          exercise.kind === 'web'
            ? say('tackmeter.exercise.web', { speed: exercise.surfaceSpeed })
            : say(`tackmeter.exercise.${exercise.kind}`)
        }
      </p>
      ${
        exercise.kind === 'web'
          ? html`<p class="note">
              ${say('rig.exercise.webAbout', { rpm: speedFor(laboratoryTackmeter, exercise.surfaceSpeed) })}
            </p>`
          : ''
      }
      ${exercise.kind === 'grade' ? this.#series() : this.#number()}
      <div class="row">
        <button
          type="button"
          ?disabled=${exercise.kind !== 'grade' && this._answer === null}
          @click=${() => this.#handIn()}
        >
          ${say('rig.exercise.hand')}
        </button>
        <button type="button" @click=${() => this.desk.set({ exercise: this.desk.state.exercise + 1, readings: [] })}>
          ${say('rig.exercise.next')}
        </button>
      </div>
      <p aria-live="polite">${this._said}</p>
    `
  }

  #number() {
    return html`<div class="row">
      <tack-number-field
        .label=${say('rig.exercise.answer')}
        .least=${answers.least}
        .most=${answers.most}
        .step=${answers.step}
        .decimals=${1}
        .value=${this._answer}
        .offer=${(value: number | null) => {
          this._answer = value
          return null
        }}
      ></tack-number-field>
    </div>`
  }

  #series() {
    const { samples, _order: order } = this
    const last = order.length - 1
    return html`<p class="field" id="series">${say('rig.exercise.order')}</p>
      <ol aria-labelledby="series">
        ${repeat(
          order,
          (sample) => sample,
          (sample, at) => {
            const name = samples[sample]?.name ?? ''
            return html`<li>
              <span>${at + 1}. ${name}</span>
              <button
                type="button"
                data-move="${sample} up"
                aria-label=${say('rig.exercise.up', { name })}
                ?disabled=${at === 0}
                @click=${() => this.#move(at, at - 1, 'up')}
              >
                ↑
              </button>
              <button
                type="button"
                data-move="${sample} down"
                aria-label=${say('rig.exercise.down', { name })}
                ?disabled=${at === last}
                @click=${() => this.#move(at, at + 1, 'down')}
              >
                ↓
              </button>
            </li>`
          },
        )}
      </ol>`
  }

  #move(from: number, to: number, way: 'up' | 'down'): void {
    const sample = this._order[from]
    this._order = moved(this._order, from, to)
    this._said = say('rig.exercise.moved', { name: this.samples[sample].name, place: to + 1 })
    this.#refocus = `${sample} ${way}`
  }

  #handIn(): void {
    const { exercise } = this
    if (exercise.kind === 'grade') {
      const right = judgeTackExercise(exercise, this._order)
      this._said = say(right ? 'rig.exercise.gradeRight' : 'rig.exercise.gradeWrong')
    } else if (this._answer !== null) {
      this._said = say(judgeTackExercise(exercise, this._answer) ? 'rig.exercise.right' : 'rig.exercise.wrong')
    }
  }
}

customElements.define('tack-exercise-panel', ExercisePanel)
