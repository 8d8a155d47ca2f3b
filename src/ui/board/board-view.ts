/** The instructor's board: result files dropped here, read in the page, and shown as a class. */
import type { PropertyDeclarations, TemplateResult } from 'lit'
import { css, html, nothing } from 'lit'
import { boardOf } from '../../class/board.ts'
import type { BoardState, ClassBoard } from '../../class/board.ts'
import { countCauses } from '../../class/count-drills.ts'
import { countLearners, leastFirst } from '../../class/count-learners.ts'
import { countLesson, countSteps } from '../../class/count-lessons.ts'
import type { LearnerDigest } from '../../class/roll.ts'
import { runsOf } from '../../class/runs.ts'
import { learnersTable, lessonsTable, refusedTable } from '../../report/class-tables.ts'
import { course, courseLesson } from '../lessons/course-files.ts'
import { language } from '../language.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { viewStyles } from '../view-styles.ts'
import { boardStyles } from './board-styles.ts'
import './cause-panel.ts'
import './class-table.ts'
import './file-drop.ts'
import { InTurns } from './in-turns.ts'
import { againWords } from './again-words.ts'
import { scoreSpreads } from './score-spread.ts'
import './step-panel.ts'

/** Stands for every group, and for every lesson. */
const all = ''
/** Stands for those who gave no group; no typed group begins with a line break. */
const none = '\n'

export class BoardView extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    group: { state: true },
    lesson: { state: true },
  }
  static override styles = [
    sharedStyles,
    viewStyles,
    boardStyles,
    css`
      select {
        max-width: 100%;
      }
      .spreads li {
        display: flex;
        flex-wrap: wrap;
        gap: 0 12px;
        align-items: center;
        font-size: 0.9375rem;
      }
      .spreads span {
        flex: 0 1 18.75rem;
      }
      .spreads svg {
        width: 12.75rem;
        height: 1rem;
        fill: none;
        stroke: var(--graphite);
      }
      .spreads rect {
        fill: var(--line);
      }
      .spreads .scale {
        stroke: var(--edge);
      }
      .spreads .middle {
        stroke-width: 3;
      }
      .again {
        padding-inline-start: 20px;
        list-style: disc;
        font-size: 0.9375rem;
      }
    `,
  ]

  /** group that is shown, or all, or none */
  declare protected group: string
  /** key of the lesson that is shown, or all */
  declare protected lesson: string
  #unsubscribe: (() => void) | undefined
  readonly #turns = new InTurns(() => this.requestUpdate())
  readonly #sections = {
    lessons: this.#turns.section<TemplateResult>(),
    steps: this.#turns.section<TemplateResult>(),
    causes: this.#turns.section<TemplateResult>(),
    learners: this.#turns.section<TemplateResult>(),
  }

  constructor() {
    super()
    this.group = all
    this.lesson = all
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.#board.subscribe(() => this.requestUpdate())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
  }

  override render() {
    const { state } = this.#board
    const learners = state.roll.learners
    return html`<main>
      <section class="panel">
        <h2>${say('board.title')}</h2>
        <p>${say('board.lead')}</p>
        <tack-file-drop class="on-screen" .board=${this.#board}></tack-file-drop>
        <div role="status">${this.#told(state, learners)}</div>
        ${this.#again(state, learners)}
      </section>
      ${state.refused.length > 0 ? this.#refused(state) : nothing}
      ${state.reading === null && learners.length > 0 ? this.#class(learners) : nothing}
    </main>`
  }

  get #board(): ClassBoard {
    return boardOf(this.session)
  }

  #told({ reading, files, refused, passedOver }: BoardState, learners: readonly LearnerDigest[]) {
    if (reading || files + refused.length === 0) return nothing
    if (learners.length === 0) return html`<p>${say('board.none')}</p>`
    return html`<p><strong>${say('board.done', { learners: learners.length, files })}</strong></p>
      ${passedOver > 0 ? html`<p>${say('board.passedOver', { count: passedOver })}</p>` : nothing}`
  }

  #again({ reading }: BoardState, learners: readonly LearnerDigest[]) {
    if (reading) return nothing
    return againWords(learners).map(
      ({ head, lines }) =>
        html`<details>
          <summary>${head}</summary>
          <ul class="again">
            ${lines.map((line) => html`<li>${line}</li>`)}
          </ul>
        </details>`,
    )
  }

  #refused({ refused }: BoardState) {
    const label = say('board.refused', { count: refused.length })
    return html`<section class="panel">
      <details open>
        <summary>${label}</summary>
        <tack-class-table
          .label=${label}
          .file=${'tackstair-not-read'}
          .table=${refusedTable(refused, say)}
        ></tack-class-table>
      </details>
    </section>`
  }

  #class(learners: readonly LearnerDigest[]) {
    const keys = this.#lessonKeys()
    const asked = this.lesson === all ? keys : [this.lesson]
    const { state } = this.#board
    const shown = this.#inGroup(learners)
    const of = [state, this.group, this.lesson, language().tag]
    this.#turns.begin()
    const { lessons, steps, causes, learners: each } = this.#sections
    return html`
      <section class="panel on-screen">${this.#filter(learners, keys)}</section>
      ${lessons.show(of, () => this.#lessons(shown, asked))} ${steps.show(of, () => this.#steps(shown))}
      ${causes.show(of, () => this.#causes(shown))} ${each.show(of, () => this.#learners(shown, asked))}
    `
  }

  #lessons(shown: readonly LearnerDigest[], asked: readonly string[]) {
    const { roll } = this.#board.state
    const counts = asked.flatMap((key) => {
      const entry = roll.lessons.get(key)
      return entry ? [countLesson(key, entry, shown)] : []
    })
    return html`<section class="panel">
      <div class="beside">
        <div>
          <h3>${say('board.lessons')}</h3>
          <p class="note">${say('board.scoreIs')}</p>
          <tack-class-table
            .label=${say('board.lessons')}
            .file=${'tackstair-lessons'}
            .table=${lessonsTable(counts, (key) => this.#titleOf(key), say)}
          ></tack-class-table>
        </div>
        ${this.#spreads(counts)}
      </div>
    </section>`
  }

  #steps(shown: readonly LearnerDigest[]) {
    const entry = this.#board.state.roll.lessons.get(this.lesson)
    return html`<section class="panel">
      ${
        entry
          ? html`<tack-step-panel
              .heading=${this.#titleOf(this.lesson)}
              .lesson=${this.#knownLesson(this.lesson)}
              .steps=${countSteps(this.lesson, entry, shown)}
            ></tack-step-panel>`
          : html`<p>${say('board.stepsChoose')}</p>`
      }
    </section>`
  }

  #causes(shown: readonly LearnerDigest[]) {
    return html`<section class="panel"><tack-cause-panel .causes=${countCauses(shown)}></tack-cause-panel></section>`
  }

  #learners(shown: readonly LearnerDigest[], asked: readonly string[]) {
    // Many have the same left to do.
    const told = new Map<string, string>()
    const sayLeft = (keys: readonly string[]) => {
      const name = keys.join('\n')
      const words = told.get(name) ?? this.#sayLeft(keys)
      told.set(name, words)
      return words
    }
    return html`<section class="panel">
      <h3>${say('board.learners')}</h3>
      <p class="note">${say('board.leftIs')}</p>
      <tack-class-table
        .label=${say('board.learners')}
        .file=${'tackstair-learners'}
        .table=${learnersTable(leastFirst(countLearners(shown, asked)), sayLeft, dayWriter(), say)}
      ></tack-class-table>
    </section>`
  }

  #spreads(counts: ReturnType<typeof countLesson>[]) {
    const lines = counts.map(({ key, score }) => ({ name: this.#titleOf(key), score }))
    if (lines.every(({ score }) => score === null)) return nothing
    return html`<div>
      <h3>${say('board.spread')}</h3>
      <p class="note">${say('board.spreadIs')}</p>
      ${scoreSpreads(lines)}
    </div>`
  }

  #filter(learners: readonly LearnerDigest[], keys: readonly string[]) {
    const groups = [...new Set(learners.map(({ group }) => group))].filter((group) => group !== '')
    groups.sort(new Intl.Collator(language().tag, { numeric: true }).compare)
    const chosen = (event: Event) => (event.target as HTMLSelectElement).value
    const option = (value: string, label: string, now: string) =>
      html`<option value=${value} .selected=${value === now}>${label}</option>`
    return html`
      <h3>${say('board.filter')}</h3>
      <div class="row">
        <label
          >${say('board.group')}
          <select @change=${(event: Event) => (this.group = chosen(event))}>
            ${option(all, say('board.allGroups'), this.group)} ${groups.map((each) => option(each, each, this.group))}
            ${
              groups.length > 0 && learners.some(({ group }) => group === '')
                ? option(none, say('board.noGroup'), this.group)
                : nothing
            }
          </select>
        </label>
        <label
          >${say('board.lesson')}
          <select @change=${(event: Event) => (this.lesson = chosen(event))}>
            ${option(all, say('board.allLessons'), this.lesson)}
            ${keys.map((key) => option(key, this.#titleOf(key), this.lesson))}
          </select>
        </label>
        <button type="button" @click=${() => window.print()}>${say('board.print')}</button>
        <button type="button" @click=${this.#clear}>${say('board.clear')}</button>
      </div>
    `
  }

  #inGroup(learners: readonly LearnerDigest[]): readonly LearnerDigest[] {
    if (this.group === all) return learners
    const group = this.group === none ? '' : this.group
    return learners.filter((learner) => learner.group === group)
  }

  /** The lessons of the course in their order, whether anybody began them or not; then what else was handed in. */
  #lessonKeys(): string[] {
    return [...new Set([...course.lessons, ...this.#board.state.roll.lessons.keys()])]
  }

  #titleOf(key: string): string {
    const entry = this.#board.state.roll.lessons.get(key)
    if (entry?.own === true) return say('board.ownLesson', { title: entry.title })
    const title = this.#knownLesson(key)?.title ?? entry?.title ?? key
    return this.#isOfCourse(key) ? say('board.courseLesson', { number: course.lessons.indexOf(key) + 1, title }) : title
  }

  /** Lessons of the course by their numbers, those in a row as first and last. */
  #sayLeft(keys: readonly string[]): string {
    const numbers = keys.filter((key) => this.#isOfCourse(key)).map((key) => course.lessons.indexOf(key) + 1)
    const runs = runsOf(numbers).map(([first, last]) => {
      if (first === last) return String(first)
      return last === first + 1 ? `${first}, ${last}` : say('board.fromTo', { first, last })
    })
    return [...runs, ...keys.filter((key) => !this.#isOfCourse(key)).map((key) => this.#titleOf(key))].join(', ')
  }

  #knownLesson(key: string) {
    return this.#isOfCourse(key) ? courseLesson(key) : undefined
  }

  #isOfCourse(key: string): boolean {
    return course.lessons.includes(key)
  }

  readonly #clear = (): void => {
    this.group = all
    this.lesson = all
    for (const section of Object.values(this.#sections)) section.clear()
    this.#board.clear()
  }
}

/**
 * Moments as ISO 8601 has them, which sort as they follow each other and which every table program knows; Swedish writes
 * them so. Making one costs more than fifty days written with it.
 */
function dayWriter(): (moment: string) => string {
  const days = new Intl.DateTimeFormat('sv-SE', { dateStyle: 'short', timeStyle: 'short' })
  return (moment) => days.format(new Date(moment))
}

customElements.define('tack-board-view', BoardView)
