/** The bench: everything of one screen in its place, and the keys that work everywhere on it. */
import { html, nothing } from 'lit'
import { benchStyles } from './bench-styles.ts'
import type { ChooseEvent } from './choice.ts'
import './choice.ts'
import { runClock } from './clock.ts'
import './line-picture.ts'
import './loupe-panel.ts'
import './ink-ladder.ts'
import './paper-panel.ts'
import './press-panel.ts'
import './reading-switch.ts'
import './readings-strip.ts'
import { say } from './say.ts'
import './scenario-bar.ts'
import './section-panel.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import { hiddenPartStyles, markHidden } from './tools/hidden-parts.ts'
import './telling.ts'
import './transport.ts'

/** On a phone one picture is shown at a time. */
const pictures = ['section', 'loupe', 'line'] as const

/** What Space means something to already. */
const pressable = 'a, button, input, select, summary, textarea, [tabindex="0"]'

export class Bench extends SessionElement {
  static override properties = { _picture: { state: true } }
  static override styles = [sharedStyles, benchStyles, hiddenPartStyles]

  declare _picture: string

  #stopClock: (() => void) | undefined

  constructor() {
    super()
    this._picture = 'section'
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#stopClock = runClock(this.session)
    document.addEventListener('keydown', this.#key)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#stopClock?.()
    document.removeEventListener('keydown', this.#key)
  }

  override willUpdate(): void {
    markHidden(this, this.session.look.hide)
  }

  override render() {
    const { session } = this
    return html`
      <section class="head" aria-label=${say('bench.head')}>
        <tack-scenario-bar .session=${session}></tack-scenario-bar>
        ${session.look.hide.includes('sheet') ? nothing : html`<tack-reading-switch .session=${session}></tack-reading-switch>`}
      </section>
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

  /** Space runs and pauses where nothing else has the focus. */
  readonly #key = (event: KeyboardEvent): void => {
    const [target] = event.composedPath()
    if (event.key !== ' ' || (target instanceof Element && target.matches(pressable))) return
    event.preventDefault()
    this.session.play({ kind: this.session.playback.playing ? 'pause' : 'play' })
  }
}

customElements.define('tack-bench', Bench)
