/** The whole page: its head, the view that is open, and what a link had wrong. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { LinkSaid } from '../session/link-said.ts'
import { lectureOf } from '../session/lecture.ts'
import type { Session } from '../session/session.ts'
import { twoInkSession } from '../session/two-inks.ts'
import type { ViewName } from '../session/view-state.ts'
import type { Followed } from './address.ts'
import { addressOf, followAddress, goToAddress, leavesSetUp, viewAsked } from './address.ts'
import { openInUnits } from '../session/snapshot.ts'
import { comfort } from './comfort.ts'
import { keepDressed } from './dress.ts'
import { isFirstVisit } from './first-visit.ts'
import type { PageHeader } from './page-header.ts'
import './page-header.ts'
import './not-loaded.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import { keepHeard } from './sound/keep-heard.ts'
import type { PageDraft } from './tools/page-draft.ts'
import { beginDraft, draftOf } from './tools/page-draft.ts'
import { showWhole } from './turns.ts'
import { openView, viewNamed } from './views.ts'
import { didNotArrive } from './did-not-arrive.ts'

export class Page extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    view: { state: true },
    failed: { state: true },
    problems: { state: true },
    firstLook: { state: true },
    aside: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: grid;
        grid-template-rows: auto auto minmax(0, 1fr);
        min-height: calc(100dvh - var(--above, 0px));
      }
      tack-page-header {
        padding: 8px 8px 0;
      }
      .notice {
        align-self: start;
        margin: 8px 8px 0;
        padding: 8px 12px;
        border: 1px solid var(--edge);
        border-radius: var(--corner);
        background: var(--accent-ground);
      }
      .notice li {
        margin: 4px 0;
      }
      @media print {
        tack-page-header,
        .notice {
          display: none;
        }
      }
      @media (width < 56.25em) {
        :host([data-view='lessons']) {
          height: calc(100dvh - var(--above, 0px));
        }
      }
      @media (min-width: 68.75em) and (min-height: 43.75em) {
        :host(:is([data-view='bench'], [data-view='lessons'])) {
          height: calc(100dvh - var(--above, 0px));
        }
      }
    `,
  ]

  /** the element of the view that is open, once it is there */
  declare protected view: { name: ViewName; element: SessionElement } | null
  declare protected failed: ViewName | null
  declare protected problems: readonly LinkSaid[]
  /** the two inks of the first look, while they are shown instead of everything else */
  declare protected firstLook: Session | null

  /** has what could not be read, until that has been seen */
  declare protected aside: PageDraft | null

  /** the fetching of a view that is under way; another one each time another view is wanted */
  #opening: { name: ViewName } | null = null
  #undress: (() => void) | undefined
  #unhear: (() => void) | undefined
  #unhearAside: (() => void) | undefined

  constructor() {
    super()
    this.view = null
    this.failed = null
    this.problems = []
    this.firstLook = null
    this.aside = null
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#undress = keepDressed(() => this.session.lookWith({}))
    this.#unhear = keepHeard(this.session)
    void this.#openInOwnUnits()
    this.#follow()
    void this.#takeUpDraft()
    if (isFirstVisit(location.hash)) void this.#lookFirst()
    window.addEventListener('hashchange', this.#goTo)
    document.addEventListener('keydown', this.#key)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    window.removeEventListener('hashchange', this.#goTo)
    document.removeEventListener('keydown', this.#key)
    this.#undress?.()
    this.#unhear?.()
    this.#unhearAside?.()
  }

  override willUpdate(): void {
    const { name } = viewNamed(this.session.look.view)
    this.dataset['view'] = name
    if (this.view?.name === name) this.#opening = null
    else if (this.#opening?.name !== name && this.failed !== name) void this.#open(name)
  }

  override render() {
    if (this.firstLook)
      return html`<tack-first-look .session=${this.firstLook} @done=${this.#endFirstLook}></tack-first-look>`
    const { name } = viewNamed(this.session.look.view)
    return html`
      ${this.#hasHead ? this.#head(name) : html`<header><h1 class="unseen">${say('page.title')}</h1></header>`}
      <div>
        ${this.problems.length > 0 ? this.#notice() : nothing}${this.aside?.aside ? this.#aside(this.aside) : nothing}
      </div>
      ${this.#body(name)}
    `
  }

  /** A link may leave it out, and a lecture that is shown fills the window. */
  get #hasHead(): boolean {
    const { hide, view, scene } = this.session.look
    const isShown = view === 'lecture' && scene !== null && lectureOf(this.session).scenes.length > 0
    return !hide.includes('header') && !isShown
  }

  #head(name: ViewName) {
    return html`<tack-page-header
      role="banner"
      .session=${this.session}
      .view=${name}
      @first-look=${this.#lookFirst}
    ></tack-page-header>`
  }

  #body(name: ViewName) {
    if (this.failed === name) return html`<div class="notice"><tack-not-loaded></tack-not-loaded></div>`
    return this.view?.name === name ? this.view.element : html`<p class="notice">${say('page.loading')}</p>`
  }

  #notice() {
    return html`<div class="notice" role="alert">
      <h2>${say('page.linkProblems')}</h2>
      <ul>
        ${this.problems.map(({ message, values }) => html`<li>${say(message, { ...values })}</li>`)}
      </ul>
      <button type="button" @click=${() => (this.problems = [])}>${say('page.close')}</button>
    </div>`
  }

  #aside(draft: PageDraft) {
    return html`<div class="notice" role="alert">
      <tack-set-aside .draft=${draft}></tack-set-aside>
      <button type="button" @click=${() => (this.aside = null)}>${say('page.close')}</button>
    </div>`
  }

  /** Once only: a second element would take the place of the first, with all that somebody had begun there. */
  async #open(name: ViewName): Promise<void> {
    const opening = (this.#opening = { name })
    try {
      const element = await openView(viewNamed(name))
      if (this.#opening !== opening) return
      element.session = this.session
      this.view = { name, element }
      void showWhole(element)
      this.failed = null
    } catch (error) {
      // Code that does not arrive (no network) is told in the page; anything else is a fault of ours.
      if (!didNotArrive(error)) throw error
      if (this.#opening === opening) this.failed = name
    } finally {
      if (this.#opening === opening) this.#opening = null
    }
  }

  /** Where its code does not arrive, the page opens without it; whoever has gone elsewhere meanwhile is left there. */
  readonly #lookFirst = async (): Promise<void> => {
    const { hash } = location
    try {
      await import('./first-look.ts')
      if (location.hash === hash) this.firstLook = twoInkSession()
    } catch (error) {
      if (!didNotArrive(error)) throw error
    }
  }

  readonly #endFirstLook = (): void => {
    this.firstLook = null
    void this.updateComplete.then(() => this.renderRoot.querySelector<PageHeader>('tack-page-header')?.focusTitle())
  }

  readonly #goTo = (): void => {
    if (this.firstLook) this.#endFirstLook()
    this.#take(goToAddress(this.session, location.hash))
  }

  #follow(): void {
    this.#take(followAddress(this.session, location.hash))
  }

  #take({ problems, task, done }: Followed): void {
    this.failed = null
    this.problems = problems
    if (task) this.view = null
    done.catch((error: unknown) => {
      if (!didNotArrive(error)) throw error
      this.problems = [...this.problems, { message: 'link.measures', values: {} }]
    })
  }

  /** Where the code for other units does not arrive, numbers stay in the set-up's own. */
  async #openInOwnUnits(): Promise<void> {
    try {
      await openInUnits(this.session, comfort().settings.measures ?? [])
    } catch (error) {
      if (!didNotArrive(error)) throw error
    }
  }

  /** A set-up that the address gives goes before a draft; a view that it names alone goes before the draft's view. */
  async #takeUpDraft(): Promise<void> {
    const takeUp = leavesSetUp(location.hash)
    // By the time the draft is found, the person may have gone elsewhere.
    await beginDraft(this.session, { takeUp, asked: () => viewAsked(location.hash) })
    const { view } = this.session.look
    if (location.hash.length <= 1 && view !== 'bench') history.replaceState(null, '', addressOf(view))
    if (draftOf(this.session).aside) await this.#tellAside()
  }

  /** What this browser had kept and cannot be read is told at once, and stays to be had under "File". */
  async #tellAside(): Promise<void> {
    try {
      await import('./tools/set-aside.ts')
    } catch (error) {
      if (!didNotArrive(error)) throw error
      return
    }
    this.aside = draftOf(this.session)
    this.#unhearAside = this.aside.subscribe(() => this.requestUpdate())
  }

  /** Undo and redo are left to the text where somebody types. */
  readonly #key = (event: KeyboardEvent): void => {
    const target = event.composedPath()[0]
    if (target instanceof HTMLInputElement && target.type === 'text') return
    if (target instanceof HTMLTextAreaElement) return
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return
    const key = event.key.toLowerCase()
    const way = key === 'y' || (key === 'z' && event.shiftKey) ? 'redo' : key === 'z' ? 'undo' : null
    if (way === null) return
    const head = this.renderRoot.querySelector<PageHeader>('tack-page-header')
    if (head) head.step(way)
    else this.session[way]()
    event.preventDefault()
  }
}

customElements.define('tack-page', Page)
