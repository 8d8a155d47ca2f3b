/** Preparing a lecture: the list of scenes, and the scene being worked on beside it. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import { exampleLecture, exampleNames } from '../../session/example-lecture.ts'
import type { Scene } from '../../session/scene.ts'
import { mostScenes } from '../../session/scene.ts'
import { benchForScene } from '../../session/scene-session.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { exampleWords } from './example-words.ts'
import { LectureElement } from './lecture-element.ts'
import './scene-editor.ts'
import type { SceneListEvent } from './scene-list.ts'
import './scene-list.ts'

const keyHints = ['begin', 'next', 'back', 'ends', 'blank', 'spot', 'carry'] as const

export class LecturePrepare extends LectureElement {
  static override properties: PropertyDeclarations = {
    ...LectureElement.properties,
    _said: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      .show {
        min-height: 44px;
        padding: 0 24px;
        font-size: 1.125rem;
      }
      .show:enabled {
        background: var(--accent);
        color: var(--on-accent);
      }
      .show:enabled:hover {
        background: var(--accent);
        text-decoration: underline;
      }
      .two {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
      }
      .row {
        align-items: center;
      }
      .keys li {
        margin-top: 4px;
      }
      @media (min-width: 56.25em) {
        .two {
          grid-template-columns: minmax(18.75rem, 2fr) minmax(0, 5fr);
          align-items: start;
        }
      }
    `,
  ]

  declare protected _said: string

  #listening: AbortController | undefined

  constructor() {
    super()
    this._said = ''
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#listening = new AbortController()
    // Before the page itself takes back what was done on the bench.
    document.addEventListener('keydown', this.#key, { capture: true, signal: this.#listening.signal })
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#listening?.abort()
  }

  override render() {
    const { session, lecture } = this
    const { scenes } = lecture
    const chosen = this.#chosen
    return html`<main>
      <div class="panel">
        <h2>${say('lecture.title')}</h2>
        <p>${say('lecture.intro')}</p>
        <div class="row">
          <button type="button" class="show" ?disabled=${scenes.length === 0} @click=${() => this.#show(0)}>
            ${say('lecture.show')}
          </button>
          <button type="button" @click=${this.#takeBench}>${say('lecture.take')}</button>
          <button type="button" ?disabled=${!lecture.canUndo} @click=${() => this.#step('undo')}>
            ${say('lecture.undo')}
          </button>
          <button type="button" ?disabled=${!lecture.canRedo} @click=${() => this.#step('redo')}>
            ${say('lecture.redo')}
          </button>
          <span role="status">${this._said}</span>
        </div>
        <details>
          <summary>${say('lecture.keys')}</summary>
          <ul class="keys">
            ${keyHints.map((hint) => html`<li>${say(`lecture.key.${hint}`)}</li>`)}
          </ul>
        </details>
      </div>
      ${scenes.length === 0 ? this.#empty() : nothing}
      ${
        scenes.length > 0
          ? html`<div class="two">
              <tack-scene-list
                class="panel"
                .session=${session}
                .chosen=${chosen}
                @scene-list=${this.#listed}
              ></tack-scene-list>
              <tack-scene-editor
                class="panel"
                .session=${session}
                .place=${chosen}
                @said=${({ detail }: CustomEvent<string>) => (this._said = detail)}
                @show-from=${() => this.#show(chosen)}
              ></tack-scene-editor>
            </div>`
          : nothing
      }
    </main>`
  }

  /** place of the scene being worked on */
  get #chosen(): number {
    return Math.max(0, Math.min(this.lecture.chosen, this.lecture.scenes.length - 1))
  }

  #choose(place: number): void {
    this.lecture.chosen = place
    this.requestUpdate()
  }

  #empty() {
    return html`<div class="panel">
      <h3>${say('lecture.count', { count: 0 })}</h3>
      <p>${say('lecture.none', { count: exampleNames.length })}</p>
      <div class="row">
        <button type="button" @click=${this.#takeExample}>${say('lecture.takeExample')}</button>
      </div>
    </div>`
  }

  #takeExample(): void {
    this.lecture.take(exampleLecture(exampleWords))
    this.#choose(0)
    this._said = say('lecture.exampleTaken', { count: exampleNames.length })
  }

  #takeBench(): void {
    const { session, lecture } = this
    if (session.printing) {
      this._said = say('lecture.printing')
      return
    }
    const place = lecture.scenes.length
    const { name, changed } = session.scenario
    const scene: Scene = {
      name: name === null || changed ? say('lecture.usualName', { number: place + 1 }) : say(`bench.scenario.${name}`),
      note: '',
      ...benchForScene(session),
    }
    if (!lecture.add(scene)) {
      this._said = say('lecture.full', { most: mostScenes })
      return
    }
    this.#choose(place)
    this._said = say('lecture.taken', { number: place + 1 })
  }

  #step(which: 'undo' | 'redo'): void {
    this.lecture[which]()
    this._said = say(which === 'undo' ? 'lecture.undone' : 'lecture.redone')
  }

  readonly #listed = ({ doing, place }: SceneListEvent): void => {
    const { lecture } = this
    const { name } = lecture.scenes[place]
    switch (doing) {
      case 'choose':
        this.#choose(place)
        break
      case 'earlier':
      case 'later': {
        const to = place + (doing === 'later' ? 1 : -1)
        lecture.move(place, to)
        this.#choose(to)
        this._said = say('lecture.moved', { name, number: to + 1, count: lecture.scenes.length })
        break
      }
      case 'duplicate':
        if (lecture.duplicate(place)) {
          this.#choose(place + 1)
          this._said = say('lecture.duplicated', { number: place + 2 })
        } else this._said = say('lecture.full', { most: mostScenes })
        break
      case 'remove':
        lecture.remove(place)
        this._said = say('lecture.removed', { name })
        break
    }
  }

  #show(at: number): void {
    if (this.lecture.scenes.length > 0) this.dispatchEvent(new CustomEvent('show', { detail: at }))
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.key === 'F5' && !event.ctrlKey && !event.shiftKey && !event.altKey && !event.metaKey) {
      if (this.lecture.scenes.length === 0) return
      event.preventDefault()
      this.#show(this.#chosen)
      return
    }
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z') return
    const [target] = event.composedPath()
    const isTyping = target instanceof Element && target.matches('input[type="text"], textarea')
    const which = event.shiftKey ? 'redo' : 'undo'
    if (isTyping || !(which === 'undo' ? this.lecture.canUndo : this.lecture.canRedo)) return
    event.preventDefault()
    event.stopPropagation()
    this.#step(which)
  }
}

customElements.define('tack-lecture-prepare', LecturePrepare)
