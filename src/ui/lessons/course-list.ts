/** The lessons of the course and those of one's own, each with how far it has come. */
import { LitElement, css, html, nothing } from 'lit'
import type { Lesson } from '../../lesson/lesson.ts'
import { resume, summaryOf } from '../../lesson/progress.ts'
import { largestFile } from '../../lesson/source.ts'
import type { Learning } from '../../session/learning.ts'
import type { Session } from '../../session/session.ts'
import { addressOf } from '../address.ts'
import { language } from '../language.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { courseLesson, offeredLessons } from './course-files.ts'
import './hand-in.ts'
import { lessonStyles } from './lesson-styles.ts'

export type ListWish =
  { open: string } | { handout: string } | { copy: string } | { openOwn: string } | { write: true } | { file: File }

export class CourseList extends LitElement {
  static override properties = {
    session: { attribute: false },
    learning: { attribute: false },
    taken: { attribute: false },
    teaching: { state: true },
  }
  static override styles = [
    sharedStyles,
    lessonStyles,
    css`
      :host {
        display: grid;
        gap: 12px;
        max-width: 68.75rem;
      }
      .lead {
        max-width: 70ch;
        font-size: 1.0625rem;
      }
      label.check {
        display: flex;
        gap: 8px;
        align-items: center;
        min-height: 1.75rem;
      }
      .course {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(20.625rem, 100%), 1fr));
        gap: 8px;
      }
      .course > li {
        display: grid;
        gap: 6px;
        align-content: start;
        padding: 10px 14px;
        border: var(--hairline) solid var(--panel-edge);
        border-radius: var(--corner);
        background: var(--panel);
      }
      .course > .current {
        outline: 2px solid var(--accent);
        outline-offset: -2px;
      }
      progress {
        width: 100%;
        height: 6px;
        accent-color: var(--accent);
      }
      .aims {
        padding-inline-start: 20px;
        font-size: 0.9375rem;
        list-style: disc;
      }
      .own {
        padding: 12px 14px;
        border: 1px dashed var(--edge);
        border-radius: var(--corner);
      }
      .own > * + * {
        margin-top: 8px;
      }
      label.file {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
      }
      input[type='file'] {
        max-width: 100%;
        border: 0;
        background: none;
      }
    `,
  ]

  declare session: Session
  declare learning: Learning
  /** changes when progress has come from elsewhere */
  declare taken: number
  /** whether what instructors do with a lesson is shown beside what learners do */
  declare protected teaching: boolean

  constructor() {
    super()
    this.teaching = false
  }

  /** For whoever comes back to it: reading goes on from its head. */
  async focusHead(): Promise<void> {
    await this.updateComplete
    this.renderRoot.querySelector('h2')?.focus()
  }

  override render() {
    const { keeps, own, writing } = this.learning
    const states = offeredLessons().map((id) => this.#stateOf(id, courseLesson(id)))
    const next = states.findIndex(({ finished }) => !finished)
    return html`
      <h2 tabindex="-1">${say('lessons.heading')}</h2>
      <p class="lead">${say('lessons.lead')}</p>
      ${keeps ? nothing : html`<p class="set-off" role="status">${say('lessons.notKept')}</p>`}
      <label class="check">
        <input
          type="checkbox"
          .checked=${this.teaching}
          @change=${(event: Event) => (this.teaching = (event.target as HTMLInputElement).checked)}
        />
        ${say('lessons.teaching')}
      </label>
      <ol class="course" aria-label=${say('lessons.course')}>
        ${offeredLessons().map((id, at) => this.#entry(courseLesson(id), at, states[at], at === next))}
      </ol>
      <section class="own">
        <h3>${say('lessons.own')}</h3>
        <p>${say('lessons.ownLead')}</p>
        <div class="row">
          <label class="file">
            ${say('lessons.openFile')}
            <input type="file" accept=".yaml,.yml" @change=${this.#file} />
          </label>
          <button type="button" @click=${() => this.#wish({ write: true })}>
            ${say(writing === '' ? 'lessons.write' : 'lessons.goOnWriting')}
          </button>
        </div>
        <ul>
          ${Object.keys(own).map(
            (id) =>
              html`<li class="row">
                <strong>${id}</strong>
                <button
                  type="button"
                  aria-label=${say('lessons.ofLesson', { action: say('lessons.goOnWith'), title: id })}
                  @click=${() => this.#wish({ openOwn: id })}
                >
                  ${say('lessons.goOnWith')}
                </button>
                <button
                  type="button"
                  class="plain"
                  aria-label=${say('lessons.ofLesson', { action: say('lessons.remove'), title: id })}
                  @click=${() => this.#remove(id)}
                >
                  ${say('lessons.remove')}
                </button>
              </li>`,
          )}
        </ul>
        <p class="note">${say('lessons.fileLimit', { most: largestFile / 1024 })}</p>
      </section>
      <section class="own"><tack-hand-in .session=${this.session}></tack-hand-in></section>
      <p><a href=${addressOf('board')}>${say('board.open')}</a> <span class="note">${say('board.openIs')}</span></p>
    `
  }

  #entry(lesson: Lesson, at: number, { done, begun, finished }: State, current: boolean) {
    const { id, title, steps, minutes, objectives } = lesson
    const action = say(finished ? 'lessons.again' : begun ? 'lessons.goOnWith' : 'lessons.begin')
    const named = (words: string) => say('lessons.ofLesson', { action: words, title })
    const state = finished
      ? say('lessons.finished')
      : begun
        ? say('lessons.underway', { done, steps: steps.length })
        : say('lessons.notBegun')
    return html`<li class=${current ? 'current' : ''}>
      <p class="note">
        ${say('lessons.number', { number: at + 1 })} · ${say('lessons.minutes', { minutes })}
        ${lesson.language === language().tag ? nothing : say('language.only', { language: lesson.language })}
      </p>
      <h3 lang=${lesson.language}>${title}</h3>
      <p class="note">${state}</p>
      <progress max=${steps.length} .value=${done} aria-label=${state}></progress>
      <details>
        <summary>${say('lessons.aims')}</summary>
        <ul class="aims" lang=${lesson.language}>
          ${objectives.map((each) => html`<li>${each}</li>`)}
        </ul>
      </details>
      <div class="row">
        <button
          type="button"
          class=${current ? 'main' : ''}
          aria-label=${named(action)}
          @click=${() => this.#wish({ open: id })}
        >
          ${action}
        </button>
        ${this.teaching ? this.#forInstructors(id, named) : nothing}
      </div>
    </li>`
  }

  #forInstructors(id: string, named: (words: string) => string) {
    const [handout, copy] = [say('lessons.handout'), say('lessons.copy')]
    return html`
      <button type="button" class="plain" aria-label=${named(handout)} @click=${() => this.#wish({ handout: id })}>
        ${handout}
      </button>
      <button type="button" class="plain" aria-label=${named(copy)} @click=${() => this.#wish({ copy: id })}>
        ${copy}
      </button>
    `
  }

  #stateOf(key: string, lesson: Lesson): State {
    const kept = this.learning.lesson(key)
    const progress = kept && resume(lesson, kept.progress)
    if (!progress) return { begun: false, done: 0, finished: false }
    const { done, finished } = summaryOf(lesson, progress)
    return { begun: true, done, finished }
  }

  #remove(id: string): void {
    this.learning.forgetOwn(id)
    this.requestUpdate()
  }

  #file(event: Event): void {
    const file = (event.target as HTMLInputElement).files?.item(0)
    if (file) this.#wish({ file })
  }

  #wish(detail: ListWish): void {
    this.dispatchEvent(new CustomEvent('wish', { detail }))
  }
}

interface State {
  begun: boolean
  done: number
  finished: boolean
}

customElements.define('tack-course-list', CourseList)
