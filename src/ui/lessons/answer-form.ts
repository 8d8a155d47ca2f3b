/** The form of a question: a choice, an order, a number, or a cause and what proves it. Fires `hand-in`. */
import type { PropertyValues } from 'lit'
import { LitElement, css, html, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import type { Question } from '../../lesson/expectation.ts'
import type { Answer, PredictStep } from '../../lesson/step.ts'
import { plainLine } from '../../lesson/prose.ts'
import { moved } from '../../session/order.ts'
import { readTyped, say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { lessonStyles } from './lesson-styles.ts'
import { proseLine } from './prose-view.ts'
import { shownUnit } from './shown-unit.ts'

export class HandInEvent extends Event {
  readonly answer: Answer

  constructor(answer: Answer) {
    super('hand-in')
    this.answer = answer
  }
}

interface Item {
  id: string
  text: string
}

export class AnswerForm extends LitElement {
  static override properties = {
    question: { attribute: false },
    given: { attribute: false },
    fixed: { type: Boolean },
    _order: { state: true },
    _problem: { state: true },
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    lessonStyles,
    css`
      form {
        display: grid;
        gap: 8px;
        justify-items: start;
      }
      fieldset {
        display: grid;
        gap: 4px;
        width: 100%;
      }
      label.choice {
        display: flex;
        gap: 8px;
        align-items: flex-start;
        padding: 4px 8px;
        border: 1px solid var(--line);
        border-radius: var(--corner);
        background: var(--field);
        font-size: 1rem;
        line-height: 1.5rem;
        cursor: pointer;
      }
      label.choice:has(:checked) {
        border-color: var(--accent);
        background: var(--accent-ground);
      }
      label.choice:has(:disabled) {
        cursor: default;
      }
      label.choice input {
        flex: none;
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
      li > span {
        flex: 1;
      }
      li button {
        min-width: 2rem;
      }
      .number input {
        width: 7rem;
        padding: 0 8px;
        text-align: end;
      }
      @media (pointer: coarse) {
        label.choice {
          padding: 10px 8px;
        }
        li button {
          min-width: 44px;
        }
      }
    `,
  ]

  declare question: Question | PredictStep
  /** what was handed in before */
  declare given: Answer | undefined
  /** handed in for good */
  declare fixed: boolean
  declare _order: readonly string[]
  declare _problem: string
  declare _said: string
  #refocus: { id: string; by: number } | null = null

  constructor() {
    super()
    this.fixed = false
    this._order = []
    this._problem = ''
    this._said = ''
  }

  override willUpdate(changed: PropertyValues): void {
    if (!changed.has('question')) return
    this._problem = ''
    this._said = ''
    const { question, given } = this
    if (!('is' in question) || question.is !== 'sequence') return
    const written = question.items.map(({ id }) => id)
    const before = given && 'sequence' in given ? given.sequence : written
    this._order = [...before].sort().join() === [...written].sort().join() ? before : written
  }

  override render() {
    const button = 'is' in this.question ? 'lessons.handIn' : 'lessons.commit'
    return html`<form novalidate @submit=${this.#submit}>
      ${this.#fields()}
      <p role="alert" class=${this._problem ? 'set-off' : 'unseen'}>${this._problem}</p>
      ${this.fixed ? nothing : html`<button type="submit" class="main">${say(button)}</button>`}
    </form>`
  }

  #fields() {
    const { question, given } = this
    if (!('is' in question)) return this.#choices(say('lessons.answer'), question.choices, chosenIn(given))
    switch (question.is) {
      case 'choice':
        return this.#choices(say('lessons.answer'), question.choices, chosenIn(given))
      case 'sequence':
        return this.#sequence(question.items)
      case 'number':
        return html`<label class="row number"
          >${say('lessons.yourNumber')}
          <span class="row">
            <input
              type="text"
              name="number"
              inputmode="decimal"
              autocomplete="off"
              .value=${given && 'enter' in given ? String(given.enter) : ''}
              ?disabled=${this.fixed}
            />
            <span>${shownUnit(question.unit)}</span>
          </span>
        </label>`
      case 'diagnosis':
        return html`${this.#choices(say('lessons.cause'), question.causes, given && 'cause' in given ? given.cause : '')}
          <fieldset ?disabled=${this.fixed}>
            <legend>${say('lessons.evidence')}</legend>
            ${question.evidence.map(
              ({ id, text }) =>
                html`<label class="choice"
                  ><input
                    type="checkbox"
                    name="because"
                    value=${id}
                    .checked=${given !== undefined && 'because' in given && given.because.includes(id)}
                  /><span>${proseLine(text)}</span></label
                >`,
            )}
          </fieldset>`
    }
  }

  #choices(legend: string, choices: readonly Item[], chosen: string) {
    return html`<fieldset ?disabled=${this.fixed}>
      <legend class=${legend === say('lessons.answer') ? 'unseen' : ''}>${legend}</legend>
      ${repeat(
        choices,
        ({ id }) => id,
        ({ id, text }) =>
          html`<label class="choice"
            ><input type="radio" name="choose" value=${id} .checked=${id === chosen} /><span
              >${proseLine(text)}</span
            ></label
          >`,
      )}
    </fieldset>`
  }

  #sequence(items: readonly Item[]) {
    const last = items.length - 1
    return html`<fieldset ?disabled=${this.fixed}>
      <legend>${say('lessons.sequence')}</legend>
      <ol>
        ${repeat(
          this._order,
          (id) => id,
          (id, place) => {
            const text = items.find((item) => item.id === id)?.text ?? id
            const name = plainLine(text)
            return html`<li data-id=${id}>
              <span>${place + 1}. ${proseLine(text)}</span>
              ${[-1, 1].map(
                (by) =>
                  html`<button
                    type="button"
                    data-by=${by}
                    ?disabled=${this.fixed || (by < 0 ? place === 0 : place === last)}
                    aria-label=${say(by < 0 ? 'lessons.earlier' : 'lessons.later', { item: name })}
                    @click=${() => this.#move(id, place, by, name)}
                  >
                    <span aria-hidden="true">${by < 0 ? '▲' : '▼'}</span>
                  </button>`,
              )}
            </li>`
          },
        )}
      </ol>
      <p class="unseen" role="status">${this._said}</p>
    </fieldset>`
  }

  override updated(): void {
    if (!this.#refocus) return
    const { id, by } = this.#refocus
    this.#refocus = null
    const row = this.renderRoot.querySelector(`[data-id="${id}"]`)
    const wanted = row?.querySelector<HTMLButtonElement>(`[data-by="${by}"]:not(:disabled)`)
    ;(wanted ?? row?.querySelector<HTMLButtonElement>('button:not(:disabled)'))?.focus()
  }

  #move(id: string, place: number, by: number, item: string): void {
    this._order = moved(this._order, place, place + by)
    this._said = say('lessons.movedTo', { item, place: place + by + 1 })
    this.#refocus = { id, by }
  }

  #submit(event: SubmitEvent): void {
    event.preventDefault()
    const answer = this.#read(new FormData(event.currentTarget as HTMLFormElement))
    // The same words once more are read only where they have been away.
    this._problem = ''
    if (typeof answer === 'string') void this.updateComplete.then(() => (this._problem = answer))
    else this.dispatchEvent(new HandInEvent(answer))
  }

  /** The answer, or why there is none yet. */
  #read(form: FormData): Answer | string {
    const { question } = this
    const choose = textOf(form.get('choose'))
    if (!('is' in question) || question.is === 'choice') return choose === '' ? say('lessons.chooseFirst') : { choose }
    switch (question.is) {
      case 'sequence':
        return { sequence: [...this._order] }
      case 'number': {
        const typed = textOf(form.get('number'))
        const enter = readTyped(typed)
        return enter === null ? say('lessons.numberFirst', { given: typed.slice(0, 20) }) : { enter }
      }
      case 'diagnosis': {
        const because = form.getAll('because').map(textOf)
        return choose === '' || because.length === 0 ? say('lessons.chooseCause') : { cause: choose, because }
      }
    }
  }
}

function chosenIn(given: Answer | undefined): string {
  return given && 'choose' in given ? given.choose : ''
}

function textOf(value: FormDataEntryValue | null): string {
  return typeof value === 'string' ? value : ''
}

customElements.define('tack-answer-form', AnswerForm)
