/** The lesson beside the bench: one step at a time, and what the bench showed once it is handed in. */
import type { CautionId } from '../../lesson/caution.ts'
import type { LitElement, PropertyDeclarations, PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import { keyed } from 'lit/directives/keyed.js'
import { isQuestion } from '../../lesson/expectation.ts'
import type { Glossary } from '../../lesson/language.ts'
import { glossaryFor } from '../../lesson/language.ts'
import { mayGoOn, recordOf } from '../../lesson/progress.ts'
import type { Answer, Step } from '../../lesson/step.ts'
import { prefersStill } from '../motion.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { countVisible } from '../visible-time.ts'
import type { HandInEvent } from './answer-form.ts'
import './answer-form.ts'
import { course } from './course-files.ts'
import './instructor-panel.ts'
import type { InstructorWish } from './instructor-panel.ts'
import type { LessonPlay } from './lesson-play.ts'
import { lessonStyles } from './lesson-styles.ts'
import { outcomeView } from './outcome.ts'
import { proseView } from './prose-view.ts'

export class LessonRunner extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    play: { attribute: false },
    heard: { attribute: false },
    wish: { state: true },
  }
  static override styles = [
    sharedStyles,
    lessonStyles,
    css`
      :host {
        display: grid;
        gap: 12px;
        align-content: start;
      }
      progress {
        width: 100%;
        height: 6px;
        accent-color: var(--accent);
      }
      .kind {
        color: var(--soft);
        font-size: 0.9375rem;
      }
      .words {
        border-color: var(--accent);
      }
      .set-off > * + * {
        margin-top: 6px;
      }
      .told {
        border-color: var(--graphite);
        background: var(--field);
        font-size: 1rem;
      }
      .hints {
        padding-inline-start: 20px;
        list-style: decimal;
      }
      /* The way on stays in view, however long the step and what is said of it. */
      .foot {
        position: sticky;
        bottom: 0;
        z-index: 1;
        padding: 10px 0;
        border-top: 1px solid var(--line);
        background: var(--panel);
      }
      @media (height < 31.25em) {
        .foot {
          padding: 4px 0;
        }
      }
      .moves {
        justify-content: space-between;
      }
      .told {
        scroll-margin: 12px 0 6.5rem;
      }
      .note {
        font-size: 0.9375rem;
      }
      /* What is still to be said takes no room before. */
      :is([role='status'], [aria-live]):not(:has(*)) {
        margin-top: -12px;
      }
      /* The letters of a bare button stand in line with the text above. */
      .row > .plain:first-child {
        margin-inline-start: -9px;
      }
    `,
  ]

  declare play: LessonPlay
  /** cautions that the learner has met in an earlier lesson */
  declare heard: ReadonlySet<CautionId>
  declare protected wish: InstructorWish
  #shownStep: Step | null = null
  /** something was handed in, and what is said of it has to come into view */
  #told = false
  /** how often something was handed in: the same words as before are read out again */
  #handed = 0

  constructor() {
    super()
    this.heard = new Set()
    this.wish = { hideFeedback: false, showNotes: false }
  }

  #stopCounting: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    if (this.hasUpdated) this.#count()
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#stopCounting?.()
    this.#stopCounting = undefined
  }

  override willUpdate(changed: PropertyValues): void {
    if (!changed.has('play')) return
    this.#shownStep = null
    this.#count()
  }

  /** Counts the time spent on the lesson that is shown, and writes it down whenever it is left. */
  #count(): void {
    this.#stopCounting?.()
    const { play } = this
    const stop = countVisible(play.time, () => play.leave())
    this.#stopCounting = () => {
      stop()
      play.leave()
    }
  }

  override render() {
    const { lesson, progress, step, index, missed } = this.play
    const glossary = withoutEveryday(glossaryFor(lesson))
    const { length } = lesson.steps
    const place = say('lessons.step', { step: index + 1, steps: length })
    return html`
      <div>
        <p class="kind" lang=${lesson.language}>${lesson.title}</p>
        <h2 tabindex="-1">${place}: ${say(`lessons.stepKind.${step.kind}`)}</h2>
      </div>
      <progress max=${length} .value=${index + 1} aria-label=${place}></progress>
      <div class="prose-text" lang=${lesson.language}>${proseView(step.text, glossary)}</div>
      ${this.#words(step, glossaryFor(lesson))} ${this.#cautions(step)} ${this.#task(step)}
      <div role="status">
        ${keyed(this.#handed, this.#outcome(outcomeView(lesson, progress, step, missed, glossary)))}
      </div>
      ${this.#hints(step, glossary)} ${this.#moves(step)}
      ${
        this.wish.showNotes && step.note !== undefined
          ? html`<section class="set-off note">
              <h3>${say('lessons.note')}</h3>
              ${proseView(step.note)}
            </section>`
          : nothing
      }
      <tack-instructor-panel
        .lesson=${lesson}
        .step=${step.id}
        .wish=${this.wish}
        @wish=${(event: CustomEvent<InstructorWish>) => (this.wish = event.detail)}
        @jump=${(event: CustomEvent<string>) => this.#do(() => this.play.jumpTo(event.detail))}
        @start-again=${() => this.#do(() => this.play.startAgain())}
      ></tack-instructor-panel>
    `
  }

  override updated(): void {
    this.play.follow()
    this.play.keep()
    const { step } = this.play
    if (this.#shownStep && this.#shownStep.id !== step.id) {
      this.renderRoot.querySelector('h2')?.focus()
      this.dispatchEvent(new Event('turned', { bubbles: true, composed: true }))
    } else if (this.#told) void this.#show()
    this.#told = false
    this.#shownStep = step
  }

  /** What is said comes into view; where nothing is left to hand in, the focus goes on to what is next. */
  async #show(): Promise<void> {
    const behavior = prefersStill() ? 'instant' : 'smooth'
    this.renderRoot.querySelector('.told')?.scrollIntoView({ block: 'nearest', behavior })
    await this.renderRoot.querySelector<LitElement>('tack-answer-form')?.updateComplete
    if (recordOf(this.play.progress, this.play.step.id).done)
      this.renderRoot.querySelector<HTMLElement>('.moves .main:enabled')?.focus({ preventScroll: true })
  }

  focusStep(): void {
    this.renderRoot.querySelector('h2')?.focus()
  }

  /** Each term that the step explains, with its sentence. */
  #words({ explains = [] }: Step, glossary: Glossary) {
    const entries = explains.flatMap((id) => (Object.hasOwn(glossary, id) ? [glossary[id]] : []))
    if (entries.length === 0) return nothing
    return html`<section class="set-off words" aria-label=${say('lessons.words')}>
      ${entries.map(({ term, sentence }) => html`<p><strong>${term}</strong>: ${sentence}</p>`)}
    </section>`
  }

  /** Those of the whole lesson stand at its first step, folded where an earlier lesson has said them. */
  #cautions(step: Step) {
    const first = this.play.index === 0 ? this.play.lesson.cautions : []
    const ofStep = new Set(step.cautions)
    const heard = first.filter((id) => this.heard.has(id) && !ofStep.has(id))
    const ids = [...new Set([...ofStep, ...first])].filter((id) => !heard.includes(id))
    const said = (ids: readonly CautionId[]) => ids.map((id) => html`<p>${say(id)}</p>`)
    return html`
      ${
        ids.length > 0
          ? html`<section class="set-off">
              <h3>${say('lessons.caution')}</h3>
              ${said(ids)}
            </section>`
          : nothing
      }
      ${
        heard.length > 0
          ? html`<details>
              <summary>${say('lessons.cautionAgain')}</summary>
              ${said(heard)}
            </details>`
          : nothing
      }
    `
  }

  #task(step: Step) {
    if (step.kind === 'say') return nothing
    const record = recordOf(this.play.progress, step.id)
    const question = step.kind === 'predict' ? step : step.expect.find(isQuestion)
    const waits = this.session.printing !== null
    return html`
      ${
        question
          ? html`<tack-answer-form
              .question=${question}
              .given=${record.answer}
              .fixed=${record.done || waits}
              @hand-in=${(event: HandInEvent) => this.#handIn(event.answer)}
            ></tack-answer-form>`
          : nothing
      }
      ${
        !question && !record.done
          ? html`<div class="row">
              <button type="button" class="main" ?disabled=${waits} @click=${() => this.#handIn()}>
                ${say('lessons.check')}
              </button>
            </div>`
          : nothing
      }
      ${waits ? html`<p class="note">${say('lessons.waitForSheet')}</p>` : nothing}
    `
  }

  #hints(step: Step, glossary: Glossary) {
    const hints = step.kind === 'do' || step.kind === 'expect' ? (step.hints ?? []) : []
    const { done, hints: shown } = recordOf(this.play.progress, step.id)
    if (hints.length === 0 || done) return nothing
    return html`<div aria-live="polite">
        ${
          shown > 0
            ? html`<section class="set-off" aria-label=${say('lessons.hints')}>
                <ol class="hints">
                  ${hints.slice(0, shown).map((hint) => html`<li>${proseView(hint, glossary)}</li>`)}
                </ol>
              </section>`
            : nothing
        }
      </div>
      <div class="row">
        <button
          type="button"
          aria-disabled=${shown >= hints.length}
          @click=${() => this.#do(() => this.play.askHint())}
        >
          ${shown < hints.length ? say('lessons.hint', { shown, all: hints.length }) : say('lessons.noMoreHints')}
        </button>
      </div>`
  }

  #outcome(told: ReturnType<typeof outcomeView>) {
    const { step } = this.play
    if (told === nothing || step.kind === 'predict' || !this.wish.hideFeedback) return told
    return html`<p class="set-off">${say('lessons.feedbackHidden')}</p>`
  }

  #moves(step: Step) {
    const { lesson, progress, index } = this.play
    const record = recordOf(progress, step.id)
    const may = mayGoOn(lesson, progress)
    const last = index === lesson.steps.length - 1
    const asked = step.kind === 'do' || step.kind === 'expect'
    return html`<div class="foot">
        <div class="row moves">
          <button type="button" ?disabled=${index === 0} @click=${() => this.#do(() => this.play.goBack())}>
            ${say('lessons.back')}
          </button>
          <button
            type="button"
            class="main"
            ?disabled=${!may}
            aria-describedby=${may ? nothing : 'when'}
            @click=${() => this.#next(last)}
          >
            ${say(last ? 'lessons.toResults' : 'lessons.next')}
          </button>
        </div>
        ${may ? nothing : html`<p id="when" class="note">${say(last ? 'lessons.resultsWhenDone' : 'lessons.nextWhenDone')}</p>`}
      </div>
      ${
        asked
          ? html`<div class="row">
              ${
                record.done
                  ? html`<button type="button" class="plain" @click=${() => this.#do(() => this.play.retry())}>
                      ${say('lessons.tryAgain')}
                    </button>`
                  : html`<button type="button" class="plain" @click=${() => this.#do(() => this.play.setBack())}>
                      ${say('lessons.setBack')}
                    </button>`
              }
            </div>`
          : nothing
      }`
  }

  #handIn(answer?: Answer): void {
    this.#told = true
    this.#handed++
    this.#do(() => this.play.handIn(answer))
  }

  #next(last: boolean): void {
    this.#do(() => this.play.goOn())
    if (!last) return
    this.play.keep()
    this.dispatchEvent(new Event('results', { bubbles: true, composed: true }))
  }

  #do(move: () => void): void {
    move()
    this.requestUpdate()
    this.dispatchEvent(new Event('moved'))
  }
}

/** Words everybody knows need no mark in the text. */
function withoutEveryday(glossary: Glossary): Glossary {
  return Object.fromEntries(Object.entries(glossary).filter(([id]) => !course.everyday.includes(id)))
}

customElements.define('tack-lesson-runner', LessonRunner)
