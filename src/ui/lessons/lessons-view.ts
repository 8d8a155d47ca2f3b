/** The lessons: the course, one lesson beside the bench, its results, its printed sheet, and the author's mode. */
import type { PropertyDeclarations, PropertyValues } from 'lit'
import { html, nothing } from 'lit'
import { asksDensity } from '../../lesson/asks-density.ts'
import type { Lesson } from '../../lesson/lesson.ts'
import type { Problem } from '../../lesson/source.ts'
import { largestFile } from '../../lesson/source.ts'
import type { Learning } from '../../session/learning.ts'
import { learningOf, ownIdIn, ownKey } from '../../session/learning.ts'
import { nextTurn } from '../../view/next-turn.ts'
import { tellLesson } from '../address.ts'
import { browserStorage } from '../browser-storage.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { showWhole } from '../turns.ts'
import {
  cautionsHeard,
  checked,
  course,
  courseLesson,
  exampleText,
  lessonText,
  offeredLessons,
  termsKnownBefore,
} from './course-files.ts'
import { checkerLine } from './checker-line.ts'
import type { CourseList, ListWish } from './course-list.ts'
import './course-list.ts'
import './lesson-author.ts'
import './lesson-bench.ts'
import './lesson-handout.ts'
import { LessonPlay } from './lesson-play.ts'
import './lesson-results.ts'
import type { LessonRunner } from './lesson-runner.ts'
import './lesson-runner.ts'
import { lessonsViewStyles } from './lessons-view-styles.ts'
import { lessonStyles } from './lesson-styles.ts'

type Screen =
  | { kind: 'list' }
  | { kind: 'lesson' | 'results'; key: string; play: LessonPlay; problems: readonly Problem[] }
  | { kind: 'handout'; lesson: Lesson }
  | { kind: 'author' }

/** A file that could not be run, in words. */
interface Refused {
  message: string
  problems: readonly Problem[]
  /** undefined where it was not even read */
  text: string | undefined
}

export class LessonsView extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    screen: { state: true },
    refused: { state: true },
    over: { state: true },
    large: { state: true },
  }
  static override styles = [sharedStyles, lessonStyles, lessonsViewStyles]

  declare protected screen: Screen
  declare protected refused: Refused | null
  /** a file is held over the page */
  declare protected over: boolean
  /** the lesson takes most of a small screen */
  declare protected large: boolean

  constructor() {
    super()
    this.screen = { kind: 'list' }
    this.refused = null
    this.over = false
    this.large = true
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.addEventListener('dragover', this.#dragOver)
    this.addEventListener('dragleave', this.#dragLeave)
    this.addEventListener('drop', this.#drop)
    this.#openKept()
    this.#unsubscribe = this.#learning.subscribe(() => this.#openOvertaken())
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribe?.()
    this.removeEventListener('dragover', this.#dragOver)
    this.removeEventListener('dragleave', this.#dragLeave)
    this.removeEventListener('drop', this.#drop)
    const { session } = this
    queueMicrotask(() => session.giveBack())
  }

  override willUpdate(changed: PropertyValues): void {
    if (changed.has('language')) this.#turnToLanguage()
    this.dataset['screen'] = this.screen.kind
    this.toggleAttribute('data-large', this.large)
    const { screen: before, session } = this
    // A file or a draft has been put on the bench meanwhile, as the person's own.
    if (before.kind === 'lesson' && !session.isLent) this.#play(before.play.lesson, before.key, before.problems)
    if (!changed.has('screen')) return
    const { screen } = this
    if (screen.kind === 'list' || screen.kind === 'handout') session.giveBack()
    else if (screen.kind === 'lesson') this.#showKnown()
    else session.lookWith({ closed: [], known: null })
  }

  override render() {
    return html`
      ${this.over ? html`<p class="drop" role="status">${say('lessons.dropHere')}</p>` : nothing}
      ${this.refused ? this.#refusal(this.refused) : nothing}
      <main>${this.#screen()}</main>
    `
  }

  override updated(changed: PropertyValues): void {
    // Another language shows the same place, and leaves whoever chose it where they were.
    if (!changed.has('screen') || changed.has('language')) return
    // On a phone the head of the page gives way, so that lesson and bench have the whole screen.
    this.scrollIntoView()
    // Whoever comes back to the list reads on from its head.
    if (this.screen.kind === 'list' && changed.get('screen'))
      void this.renderRoot.querySelector<CourseList>('tack-course-list')?.focusHead()
    if (this.screen.kind === 'lesson') {
      void showWhole(this.renderRoot.querySelector('main') as HTMLElement)
      void this.#focusStep()
    }
  }

  async #focusStep(): Promise<void> {
    const runner = this.renderRoot.querySelector<LessonRunner>('tack-lesson-runner')
    await runner?.updateComplete
    // To focus it the browser has to lay it out, which takes a slow machine as long as drawing it did.
    await nextTurn()
    if (runner?.isConnected === true) runner.focusStep()
  }

  #unsubscribe: (() => void) | undefined

  get #learning(): Learning {
    return learningOf(this.session, browserStorage)
  }

  #screen() {
    const { screen, session } = this
    switch (screen.kind) {
      case 'list':
        return html`<tack-course-list
          .session=${session}
          .learning=${this.#learning}
          .taken=${this.#learning.taken}
          @wish=${this.#wish}
        ></tack-course-list>`
      case 'lesson':
        return this.#lesson(screen.play, screen.problems)
      case 'results':
        return html`<tack-lesson-results
          .session=${session}
          .lesson=${screen.play.lesson}
          .progress=${screen.play.progress}
          .learning=${this.#learning}
          .next=${this.#after(screen.key)}
          @next=${() => this.#openCourse(this.#after(screen.key)?.id ?? '')}
          @back=${() => (this.screen = { ...screen, kind: 'lesson' })}
          @list=${() => this.#list()}
        ></tack-lesson-results>`
      case 'handout':
        return html`<tack-lesson-handout .lesson=${screen.lesson} @list=${() => this.#list()}></tack-lesson-handout>`
      case 'author':
        return html`<tack-lesson-author
          .session=${session}
          .learning=${this.#learning}
          @list=${() => this.#list()}
          @run=${() => this.#openText(this.#learning.writing, say('lessons.author'))}
        ></tack-lesson-author>`
    }
  }

  #lesson(play: LessonPlay, problems: readonly Problem[]) {
    return html`
      <section class="lesson" aria-label=${say('lessons.panel')}>
        <div class="row top">
          <button type="button" @click=${() => this.#list()}>${say('lessons.all')}</button>
          <button type="button" class="size" @click=${() => (this.large = !this.large)}>
            ${say(this.large ? 'lessons.smaller' : 'lessons.larger')}
          </button>
        </div>
        ${problems.length > 0 ? this.#problems(problems) : nothing}
        ${this.#learning.keeps ? nothing : html`<p class="set-off">${say('lessons.notKept')}</p>`}
        <tack-lesson-runner
          .session=${this.session}
          .play=${play}
          .heard=${cautionsHeard(play.lesson.id, this.#learning)}
          @moved=${this.#moved}
          @turned=${this.#toTop}
          @results=${this.#results}
        ></tack-lesson-runner>
      </section>
      <section class="bench" aria-label=${say('lessons.bench')}>
        <tack-lesson-bench
          .session=${this.session}
          .show=${play.lesson.show}
          .step=${play.step}
          .metered=${asksDensity(play.lesson)}
          .veiled=${play.predicting}
          .readingsVeiled=${play.predictingSoon}
        ></tack-lesson-bench>
      </section>
    `
  }

  #refusal({ message, problems, text }: Refused) {
    return html`<div class="refused" role="alert">
      <p>${message}</p>
      ${problems.length > 0 ? this.#problems(problems) : nothing}
      <div class="row">
        ${
          text === undefined
            ? nothing
            : html`<button type="button" @click=${() => this.#write(text)}>${say('lessons.mend')}</button>`
        }
        <button type="button" @click=${() => (this.refused = null)}>${say('page.close')}</button>
      </div>
    </div>`
  }

  #problems(problems: readonly Problem[]) {
    return html`<details ?open=${this.refused !== null}>
      <summary>${say('lessons.checked', { count: problems.length })}</summary>
      <ul class="problems">
        ${problems.map((problem) => html`<li>${checkerLine(problem)}</li>`)}
      </ul>
    </details>`
  }

  /** Where a file has brought progress along, an open lesson goes on from there. */
  #openOvertaken(): void {
    if (this.screen.kind !== 'lesson' && this.screen.kind !== 'results') this.requestUpdate()
    else if (this.screen.play.isOvertaken) this.#openKept()
  }

  readonly #moved = (): void => {
    this.#showKnown()
    this.requestUpdate()
  }

  /** The bench keeps what the lesson keeps, and shows no word that the course has not come to. */
  #showKnown(): void {
    if (this.screen.kind !== 'lesson') return
    const { key, play } = this.screen
    const before = termsKnownBefore(key)
    this.session.lookWith({ closed: play.closed, known: before && new Set([...before, ...play.explained]) })
  }

  /** What is open of the course goes on in the edition of the language that was chosen. */
  #turnToLanguage(): void {
    const { screen } = this
    const inCourse = (id: string) => course.lessons.includes(id)
    if (screen.kind === 'handout' && inCourse(screen.lesson.id)) {
      this.screen = { kind: 'handout', lesson: courseLesson(screen.lesson.id) }
    }
    if ((screen.kind !== 'lesson' && screen.kind !== 'results') || !inCourse(screen.key)) return
    const edition = courseLesson(screen.key)
    if (edition !== screen.play.lesson) this.screen = { ...screen, play: screen.play.inEdition(edition) }
  }

  /** The lesson that was open when the page was left. */
  #openKept(): void {
    const { open, own } = this.#learning
    const id = ownIdIn(open)
    if (id === null && course.lessons.includes(open)) this.#play(courseLesson(open), open)
    else if (id !== null && Object.hasOwn(own, id)) this.#openOwn(id)
    else if (open !== '') this.#list()
  }

  #play(lesson: Lesson, key: string, problems: readonly Problem[] = []): void {
    this.refused = null
    this.large = true
    // The bench is set while nothing is closed, and the lesson's own locks come with the screen.
    this.session.lookWith({ closed: [], known: null })
    const play = new LessonPlay(lesson, this.session, key, this.#learning, () => Date.now())
    this.screen = { kind: 'lesson', key, problems, play }
    this.#learning.open = key
    this.#tellAddress(key)
  }

  /** What stands open as the view opens was asked for by the address that is there; what is opened then is a further place. */
  #tellAddress(key: string): void {
    tellLesson(key, this.hasUpdated ? 'pushState' : 'replaceState')
  }

  #openCourse(id: string): void {
    if (course.lessons.includes(id)) this.#play(courseLesson(id), id)
  }

  #openOwn(id: string): void {
    const text = this.#learning.own[id]
    this.#openText(text, id)
  }

  /** Runs a text of unknown origin, or says why not. */
  #openText(text: string, name: string): void {
    const { lesson, problems } = checked(text)
    if (!lesson) {
      this.refused = { message: say('lessons.refused', { name }), problems, text }
      return
    }
    this.#learning.keepOwn(lesson.id, text)
    this.#play(lesson, ownKey(lesson.id), problems)
  }

  async #openFile(file: File): Promise<void> {
    if (file.size > largestFile) {
      const sizes = { size: Math.ceil(file.size / 1024), most: largestFile / 1024 }
      this.refused = { message: say('lessons.tooLarge', { name: file.name, ...sizes }), problems: [], text: undefined }
      return
    }
    const text = await file.text()
    // Whoever has gone elsewhere meanwhile keeps the bench they are at.
    if (this.isConnected) this.#openText(text, file.name)
  }

  #write(text: string): void {
    this.#learning.writing = text
    this.refused = null
    this.screen = { kind: 'author' }
  }

  readonly #wish = (event: Event): void => {
    const wish = (event as CustomEvent<ListWish>).detail
    if ('open' in wish) this.#openCourse(wish.open)
    else if ('openOwn' in wish) this.#openOwn(wish.openOwn)
    else if ('handout' in wish) this.screen = { kind: 'handout', lesson: courseLesson(wish.handout) }
    else if ('copy' in wish) this.#write(lessonText(wish.copy))
    else if ('write' in wish) this.#write(this.#learning.writing || exampleText())
    else void this.#openFile(wish.file)
  }

  readonly #results = (): void => {
    if (this.screen.kind === 'lesson') this.screen = { ...this.screen, kind: 'results' }
  }

  readonly #toTop = (): void => {
    this.renderRoot.querySelector('.lesson')?.scrollTo({ top: 0 })
  }

  #list(): void {
    this.#learning.open = ''
    this.refused = null
    this.screen = { kind: 'list' }
    this.#tellAddress('')
  }

  #after(key: string): Lesson | null {
    const at = offeredLessons().indexOf(key)
    const id = at < 0 ? undefined : offeredLessons().at(at + 1)
    return id === undefined ? null : courseLesson(id)
  }

  readonly #dragOver = (event: DragEvent): void => {
    if (!event.dataTransfer?.types.includes('Files')) return
    event.preventDefault()
    this.over = true
  }

  readonly #dragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.over = false
  }

  readonly #drop = (event: DragEvent): void => {
    const file = event.dataTransfer?.files.item(0)
    this.over = false
    if (!file) return
    event.preventDefault()
    void this.#openFile(file)
  }
}

customElements.define('tack-lessons-view', LessonsView)
