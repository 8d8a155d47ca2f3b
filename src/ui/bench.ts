/** The bench: everything of one screen in its place, and the keys that work everywhere on it. */
import { html } from 'lit'
import './bench-header.ts'
import { forgetPicture } from './bench-picture.ts'
import { benchStyles } from './bench-styles.ts'
import type { ChooseEvent } from './choice.ts'
import './choice.ts'
import { runClock } from './clock.ts'
import './line-picture.ts'
import './loupe-panel.ts'
import './ink-ladder.ts'
import './paper-panel.ts'
import './press-panel.ts'
import './readings-strip.ts'
import { say } from './say.ts'
import './scenario-bar.ts'
import './section-panel.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import './telling.ts'
import './transport.ts'

/** On a phone one picture is shown at a time. */
const pictures = ['section', 'loupe', 'line'] as const

export class Bench extends SessionElement {
  static override properties = { _picture: { state: true } }
  static override styles = [sharedStyles, benchStyles]

  declare _picture: string

  #stopClock: (() => void) | undefined
  readonly #dark = window.matchMedia('(prefers-color-scheme: dark)')

  constructor() {
    super()
    this._picture = 'section'
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#stopClock = runClock(this.session)
    document.addEventListener('keydown', this.#key)
    this.#dark.addEventListener('change', this.#recolour)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#stopClock?.()
    document.removeEventListener('keydown', this.#key)
    this.#dark.removeEventListener('change', this.#recolour)
  }

  override render() {
    const { session } = this
    return html`
      <header>
        <tack-bench-header .session=${session}></tack-bench-header>
        <tack-scenario-bar .session=${session}></tack-scenario-bar>
      </header>
      <main>
        <div class="settings" role="group" aria-label=${say('bench.settings')}>
          <tack-ink-ladder class="panel" .session=${session}></tack-ink-ladder>
          <tack-paper-panel class="panel" .session=${session}></tack-paper-panel>
          <tack-press-panel class="panel" .session=${session}></tack-press-panel>
        </div>
        <div class="pictures" role="group" aria-label=${say('bench.pictures')} data-picture=${this._picture}>
          <tack-choice
            class="panel"
            .legend=${say('bench.picture')}
            .options=${pictures.map((value) => ({ value, label: say(`bench.${value}`) }))}
            .value=${this._picture}
            @choose=${(event: ChooseEvent) => (this._picture = event.value)}
          ></tack-choice>
          <tack-line-picture class="panel" .session=${session}></tack-line-picture>
          <tack-section-panel class="panel" .session=${session}></tack-section-panel>
          <tack-loupe-panel class="panel" .session=${session}></tack-loupe-panel>
        </div>
        <tack-telling class="panel telling" .session=${session}></tack-telling>
        <tack-transport class="panel transport" .session=${session}></tack-transport>
        <tack-readings-strip class="panel readings" .session=${session}></tack-readings-strip>
      </main>
    `
  }

  override willUpdate(): void {
    const { theme } = this.session.look
    const root = document.documentElement
    if ((root.dataset['theme'] ?? 'auto') === theme) return
    if (theme === 'auto') delete root.dataset['theme']
    else root.dataset['theme'] = theme
    forgetPicture()
  }

  readonly #recolour = (): void => {
    forgetPicture()
    this.session.lookWith({})
  }

  /** Space runs and pauses where nothing else has the focus. Undo and redo are left to the text where somebody types. */
  readonly #key = (event: KeyboardEvent): void => {
    const target = event.composedPath()[0]
    if (target instanceof HTMLInputElement && target.type === 'text') return
    if (event.key === ' ' && target === document.body) {
      event.preventDefault()
      this.session.play({ kind: this.session.playback.playing ? 'pause' : 'play' })
    }
    if (!(event.ctrlKey || event.metaKey) || event.altKey) return
    const key = event.key.toLowerCase()
    if (key === 'y' || (key === 'z' && event.shiftKey)) this.session.redo()
    else if (key === 'z') this.session.undo()
    else return
    event.preventDefault()
  }
}

customElements.define('tack-bench', Bench)
