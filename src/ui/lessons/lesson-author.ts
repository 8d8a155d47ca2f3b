/** The author's mode: the text of a lesson with its problems on one side, the lesson being tried on the other. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import type { CheckedLesson } from '../../lesson/check-lesson.ts'
import { outlineOf } from '../../lesson/check-lesson.ts'
import { lessonFile } from '../../lesson/check-course.ts'
import { read } from '../../lesson/reading.ts'
import type { Problem } from '../../lesson/source.ts'
import { writeExpectation, writeStart } from '../../lesson/write.ts'
import type { Learning } from '../../session/learning.ts'
import { benchNow } from '../../session/lesson-bench.ts'
import { saySaid } from '../problem-words.ts'
import { say, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { textScale } from '../text-scale.ts'
import { saveText } from '../strip/save-text.ts'
import '../number-field.ts'
import { checkerLine } from './checker-line.ts'
import { checked } from './course-files.ts'
import './lesson-bench.ts'
import { LessonPlay } from './lesson-play.ts'
import './lesson-runner.ts'
import { lessonStyles } from './lesson-styles.ts'
import { offsetOf, withExpectation, withStart } from './lesson-text.ts'
import { readingsToTake } from './readings-to-take.ts'
import { shownUnit } from './shown-unit.ts'

/** ms after the last key until the text is checked: long enough not to stop anybody's typing */
const checkDelay = 500

/** Share of a reading that an author usually leaves to either side. */
const usualTolerance = 0.02

export class LessonAuthor extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    learning: { attribute: false },
    found: { state: true },
    told: { state: true },
    reading: { state: true },
    tolerance: { state: true },
  }
  static override styles = [
    sharedStyles,
    lessonStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
      }
      .panel {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
        align-content: start;
      }
      textarea {
        width: 100%;
        height: 46dvh;
        min-height: 15rem;
        border: 1px solid var(--edge);
        background: var(--field);
        color: inherit;
        font:
          0.875rem/1.25rem ui-monospace,
          monospace;
        tab-size: 2;
        white-space: pre;
        resize: vertical;
      }
      .problems {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 4px;
        max-height: 30dvh;
        overflow-y: auto;
      }
      .problems button {
        width: 100%;
        height: auto;
        padding: 4px 8px;
        font-weight: 400;
        text-align: start;
      }
      .take {
        padding-top: 8px;
        border-top: 1px solid var(--line);
      }
      select {
        max-width: 100%;
      }
      @media (min-width: 68.75em) {
        :host {
          grid-template-columns: minmax(26.25rem, 3fr) minmax(18.75rem, 2fr) minmax(25rem, 3fr);
          align-items: start;
        }
      }
    `,
  ]

  declare learning: Learning
  declare protected found: CheckedLesson | null
  declare protected told: string
  /** place in the list of readings to take */
  declare protected reading: number
  /** in the reading's unit; null while the usual one is meant */
  declare protected tolerance: number | null

  #play: LessonPlay | null = null
  #timer: ReturnType<typeof setTimeout> | undefined

  constructor() {
    super()
    this.found = null
    this.told = ''
    this.reading = 0
    this.tolerance = null
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#check()
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    clearTimeout(this.#timer)
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>('#author')?.focus()
  }

  override render() {
    const play = this.#play
    return html`
      <section class="panel" aria-labelledby="author">
        <div class="row">
          <h2 id="author" tabindex="-1">${say('lessons.author')}</h2>
          <button type="button" @click=${() => this.dispatchEvent(new Event('list'))}>
            ${say('lessons.leaveWriting')}
          </button>
        </div>
        <label for="text">${say('lessons.text')}</label>
        <textarea
          id="text"
          spellcheck="false"
          autocomplete="off"
          wrap="off"
          aria-describedby="how"
          .value=${this.learning.writing}
          @input=${this.#typed}
        ></textarea>
        <p id="how" class="note">${say('lessons.howTo')}</p>
        <div class="row">
          <button type="button" @click=${() => this.#save()}>${say('lessons.saveFile')}</button>
          <button type="button" ?disabled=${!play} @click=${() => this.dispatchEvent(new Event('run'))}>
            ${say('lessons.runIt')}
          </button>
        </div>
        ${this.#problems()} ${this.#takes()}
      </section>
      <section class="panel" aria-labelledby="preview">
        <h2 id="preview">${say('lessons.preview')}</h2>
        ${
          play
            ? html`<tack-lesson-runner .session=${this.session} .play=${play}></tack-lesson-runner>`
            : html`<p>${say('lessons.noPreview')}</p>`
        }
      </section>
      <tack-lesson-bench .session=${this.session}></tack-lesson-bench>
    `
  }

  #problems() {
    const { found } = this
    const count = found?.problems.length ?? 0
    return html`<h3>${say('lessons.problems')}</h3>
      <p role="status">
        ${found ? (count > 0 ? say('lessons.checked', { count }) : say('lessons.noProblems')) : say('lessons.checking')}
      </p>
      <ul class="problems">
        ${found?.problems.map(
          (problem) =>
            html`<li>
              <button type="button" class="plain" @click=${() => this.#goTo(problem)}>${checkerLine(problem)}</button>
            </li>`,
        )}
      </ul>`
  }

  #takes() {
    const choices = readingsToTake(benchNow(this.session))
    const chosen = choices.at(this.reading) ?? choices[0]
    return html`<div class="row take">
        <button type="button" @click=${() => this.#takeSetUp()}>${say('lessons.takeSetUp')}</button>
      </div>
      <div class="row">
        <label for="reading">${say('lessons.readingToTake')}</label>
        <select
          id="reading"
          @change=${(event: Event) => {
            this.reading = (event.target as HTMLSelectElement).selectedIndex
            this.tolerance = null
          }}
        >
          ${choices.map(({ name }) => html`<option>${name}</option>`)}
        </select>
        <tack-number-field
          .label=${say('lessons.tolerance')}
          .unit=${shownUnit(chosen.unit)}
          .least=${0.001}
          .most=${1000}
          .decimals=${3}
          .value=${this.tolerance}
          .placeholder=${sayNumber(this.#usualTolerance(), 0, 3)}
          .offer=${(value: number | null) => {
            this.tolerance = value
            return null
          }}
        ></tack-number-field>
        <button type="button" @click=${() => this.#takeReading()}>${say('lessons.takeReading')}</button>
      </div>
      <p role="status">${this.told}</p>`
  }

  #usualTolerance(): number {
    const bench = benchNow(this.session)
    const choices = readingsToTake(bench)
    const value = read(bench, (choices.at(this.reading) ?? choices[0]).reading)
    return typeof value === 'number' ? Math.max(0.001, Number((usualTolerance * Math.abs(value)).toPrecision(1))) : 1
  }

  #takeSetUp(): void {
    this.#write(withStart(this.learning.writing, writeStart(this.session.setUp)))
    this.told = say('lessons.tookSetUp')
  }

  #takeReading(): void {
    const bench = benchNow(this.session)
    const choices = readingsToTake(bench)
    const { reading } = choices.at(this.reading) ?? choices[0]
    const line = writeExpectation(bench, reading, this.tolerance ?? this.#usualTolerance())
    if (typeof line !== 'string') {
      this.told = say('lessons.noSuchReading', { problem: saySaid(line.problem) })
      return
    }
    const caret = this.#field.selectionEnd
    const entry = line.trim().replace(/^\[ (.*) \]$/, '- $1')
    const { text, line: at } = withExpectation(this.learning.writing, caret, entry)
    this.#write(text)
    this.told = say('lessons.tookReading', { line: at, written: entry })
  }

  get #field(): HTMLTextAreaElement {
    return this.renderRoot.querySelector('textarea') as HTMLTextAreaElement
  }

  #typed(): void {
    this.learning.writing = this.#field.value
    this.found = null
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => this.#check(), checkDelay)
  }

  #write(text: string): void {
    this.learning.writing = text
    this.#check()
  }

  /** The preview stays at its step; while the text cannot be run it shows the last one that could. */
  #check(): void {
    const found = checked(this.learning.writing)
    this.found = found
    if (!found.lesson) return
    const before = this.#play
    this.#play = before
      ? LessonPlay.inPlaceOf(before, found.lesson)
      : new LessonPlay(found.lesson, this.session, '', null, () => Date.now())
  }

  #goTo({ line, col }: Problem): void {
    const field = this.#field
    const at = offsetOf(field.value, line, col)
    field.focus()
    field.setSelectionRange(at, at)
    field.scrollTop = Math.max(0, (line - 4) * lineHeight * textScale())
  }

  #save(): void {
    const { writing } = this.learning
    saveText(lessonFile(outlineOf(writing).id || 'my-lesson'), 'text/yaml', writing)
  }
}

/** px of a line as the styles have it, where text has its usual size */
const lineHeight = 20

customElements.define('tack-lesson-author', LessonAuthor)
