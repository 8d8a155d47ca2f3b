/** What came of a lesson, to print or save. The name is optional and stays on the computer. */
import { LitElement, css, html, nothing } from 'lit'
import type { Lesson } from '../../lesson/lesson.ts'
import type { Progress } from '../../lesson/progress.ts'
import type { Learning } from '../../session/learning.ts'
import type { Session } from '../../session/session.ts'
import { language } from '../language.ts'
import { plainLine } from '../../lesson/prose.ts'
import { say, sayList } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import './hand-in.ts'
import { lessonStyles } from './lesson-styles.ts'
import {
  aimsHead,
  cheer,
  foretoldWrongly,
  resultHead,
  resultLines,
  resultText,
  stepLines,
  wordsOf,
} from './results-lines.ts'

export class LessonResults extends LitElement {
  static override properties = {
    session: { attribute: false },
    lesson: { attribute: false },
    progress: { attribute: false },
    learning: { attribute: false },
    next: { attribute: false },
    _name: { state: true },
  }
  static override styles = [
    sharedStyles,
    lessonStyles,
    css`
      :host,
      .half {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 12px;
        align-content: start;
      }
      :host {
        max-width: 47.5rem;
        padding: 16px 20px;
        border: var(--hairline) solid var(--panel-edge);
        border-radius: var(--corner);
        background: var(--panel);
      }
      dl {
        display: grid;
        grid-template-columns: minmax(0, auto) auto;
        justify-content: start;
        gap: 4px 24px;
        font-size: 1.0625rem;
      }
      dd {
        display: grid;
        grid-template-columns: 3ch auto;
        gap: 6px;
        font-weight: 650;
        font-variant-numeric: tabular-nums;
      }
      .count {
        text-align: end;
      }
      ul {
        padding-inline-start: 20px;
        list-style: disc;
      }
      .scroll {
        overflow-x: auto;
      }
      table {
        font-size: 0.9375rem;
      }
      :is(th, td):nth-child(n + 4) {
        text-align: end;
      }
      @media screen and (min-width: 68.75em) {
        :host {
          grid-template-columns: minmax(0, 42rem) auto;
          gap: 12px 64px;
          justify-content: start;
          max-width: 72rem;
        }
        h2 {
          grid-column: 1 / -1;
        }
      }
      .named:empty {
        display: none;
      }
      @media screen {
        .on-paper {
          display: none;
        }
      }
      @media print {
        :host {
          padding: 0;
          background: none;
        }
        .on-screen {
          display: none;
        }
      }
    `,
  ]

  declare session: Session
  declare lesson: Lesson
  declare progress: Progress
  declare learning: Learning
  /** the lesson after this one */
  declare next: Lesson | null
  declare _name: string

  constructor() {
    super()
    this._name = ''
    this.next = null
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this._name = this.learning.name
  }

  override render() {
    const { lesson, progress, next } = this
    const date = today()
    const words = wordsOf(lesson, progress)
    const cheered = cheer(lesson, progress)
    return html`
      <h2 tabindex="-1">${say('lessons.results', { title: lesson.title })}</h2>
      <div class="half">
        <p class="on-paper">
          ${this._name === '' ? nothing : html`${say('lessons.namedResult', { name: this._name })}<br />`}
          ${say('lessons.dateResult', { date })}
        </p>
        <p>${resultHead(lesson, progress)}</p>
        ${cheered === undefined ? nothing : html`<p>${cheered}</p>`}
        <h3>${aimsHead(lesson, progress)}</h3>
        <ul lang=${lesson.language}>
          ${lesson.objectives.map((objective) => html`<li>${plainLine(objective)}</li>`)}
        </ul>
        ${words.length > 0 ? html`<p>${say('lessons.wordsNow', { words: sayList(words) })}</p>` : nothing}
        <h3>${say('lessons.inNumbers')}</h3>
        <dl>
          ${resultLines(lesson, progress).map(
            ({ label, count, all }) =>
              html`<dt>${label}</dt>
                <dd>
                  <span class="count">${count}</span>
                  ${all === undefined ? nothing : html`<span>${say('lessons.ofAll', { all })}</span>`}
                </dd>`,
          )}
        </dl>
        ${foretoldWrongly(lesson, progress) ? html`<p class="note on-screen">${say('lessons.misread')}</p>` : nothing}
        <div class="row on-screen">
          ${
            next
              ? html`<button type="button" class="main" @click=${() => this.#tell('next')}>
                  ${say('lessons.nextLesson', { title: next.title })}
                </button>`
              : nothing
          }
          <button type="button" @click=${() => window.print()}>${say('lessons.print')}</button>
          <button type="button" @click=${() => this.#save(date)}>${say('lessons.save')}</button>
          <button type="button" @click=${() => this.#tell('back')}>${say('lessons.backToLesson')}</button>
          <button type="button" @click=${() => this.#tell('list')}>${say('lessons.all')}</button>
        </div>
        <tack-hand-in class="on-screen" .session=${this.session} @input=${this.#rename}></tack-hand-in>
      </div>
      <div class="half">
        <h3>${say('lessons.stepTable')}</h3>
        <div class="scroll" tabindex="0" role="region" aria-label=${say('lessons.stepTable')}>
          <table>
            <thead>
              <tr>
                ${(['stepHead', 'kindHead', 'stateHead', 'triesHead', 'hintsHead'] as const).map(
                  (head) => html`<th scope="col">${say(`lessons.${head}`)}</th>`,
                )}
              </tr>
            </thead>
            <tbody>
              ${stepLines(lesson, progress).map(
                ({ step, kind, state, misses, hints }) =>
                  html`<tr>
                    <th scope="row">${step}</th>
                    <td>${kind}</td>
                    <td>${state}</td>
                    <td>${misses}</td>
                    <td>${hints}</td>
                  </tr>`,
              )}
            </tbody>
          </table>
        </div>
      </div>
    `
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector('h2')?.focus()
  }

  /** What is typed has been taken over by then. */
  readonly #rename = (): void => {
    this._name = this.learning.name
  }

  #save(date: string): void {
    const { lesson, progress } = this
    saveText(`${lesson.id}-results.txt`, 'text/plain', resultText(lesson, progress, this._name.trim(), date))
  }

  #tell(type: string): void {
    this.dispatchEvent(new Event(type))
  }
}

function today(): string {
  return new Intl.DateTimeFormat(language().tag, { dateStyle: 'long' }).format(new Date())
}

customElements.define('tack-lesson-results', LessonResults)
