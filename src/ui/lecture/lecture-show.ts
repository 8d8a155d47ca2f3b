/**
 * A lecture being shown: the scene fills the window, keys of a clicker lead through it, and buttons that do the same come
 * up with the pointer. The scenes before and after stand ready unseen, so that going on shows them at once. Fires `left`.
 */
import type { PropertyDeclarations } from 'lit'
import { html, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import type { Show, ShowEvent } from '../../session/lecture-show.ts'
import { ahead, pressesOf, startShow, step } from '../../session/lecture-show.ts'
import { eventOf, keyMeant, stateOf } from '../../session/lecture-talk.ts'
import type { Scene } from '../../session/scene.ts'
import { isTried, openScene, restingPhase } from '../../session/scene-session.ts'
import type { Session } from '../../session/session.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { runClock } from '../clock.ts'
import { prefersStill } from '../motion.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { turnFullScreen } from './full-screen.ts'
import { LectureElement } from './lecture-element.ts'
import type { Begun } from './lecture-memory.ts'
import { begin, endLecture, goingOn } from './lecture-memory.ts'
import { lectureShowStyles } from './lecture-show-styles.ts'
import { LectureWire } from './lecture-wire.ts'
import './press-marks.ts'
import { pressable } from './pressable.ts'
import './scene-stage.ts'
import type { ControlEvent } from './show-controls.ts'
import './show-controls.ts'
import { saidOf } from './show-words.ts'
import { speakerAddress } from './speaker-address.ts'
import type { SpotEvent } from './spot-light.ts'

/** ms without a pointer after which buttons and pointer go from the picture. */
const idleAfter = 3000
/** ms after which the scenes around the one shown are made ready. */
const readyAfter = 250

export class LectureShow extends LectureElement {
  static override properties: PropertyDeclarations = {
    ...LectureElement.properties,
    now: { attribute: false },
    _show: { state: true },
    _idle: { state: true },
    _ready: { state: true },
    _notes: { state: true },
    _told: { state: true },
    _said: { state: true },
  }
  static override styles = [sharedStyles, lectureShowStyles]

  /** ms since 1970 */
  declare now: () => number
  declare protected _show: Show
  declare protected _idle: boolean
  /** whether the scenes before and after are made ready */
  declare protected _ready: boolean
  /** whether the speaker's note stands below the picture */
  declare protected _notes: boolean
  /** what the browser did not do */
  declare protected _told: 'lecture.blocked' | 'lecture.noFullScreen' | null
  /** what is read out */
  declare protected _said: string

  readonly #benches = new WeakMap<Scene, Session[]>()
  #clocks: (() => void)[] = []
  #begun: Begun = { id: '', began: 0 }
  #wire: LectureWire | undefined
  #listening: AbortController | undefined
  #idling = 0
  #readying = 0

  constructor() {
    super()
    this._idle = false
    this._ready = false
    this._notes = false
    this._told = null
    this._said = ''
  }

  override connectedCallback(): void {
    super.connectedCallback()
    const { scene } = this.session.look
    this._show = startShow(Math.min(scene ?? 0, this.lecture.scenes.length - 1))
    this.#begun = goingOn() ?? begin(this.now())
    this.#wire = new LectureWire(this.#begun.id, (talk) => {
      if (talk.kind === 'key') this.#take(eventOf(talk.key))
      if (talk.kind === 'hello') this.#tellSpeaker()
    })
    this.#listening = new AbortController()
    const { signal } = this.#listening
    document.addEventListener('keydown', this.#key, { signal })
    document.addEventListener('fullscreenchange', () => this.requestUpdate(), { signal })
    window.addEventListener('hashchange', this.#goToAddress, { signal })
    this.#arrive(null)
    this.#wake()
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#listening?.abort()
    for (const end of this.#clocks) end()
    window.clearTimeout(this.#idling)
    window.clearTimeout(this.#readying)
    this.#wire?.end()
  }

  override firstUpdated(): void {
    this.renderRoot.querySelector<HTMLElement>('main')?.focus()
  }

  override render() {
    const { _show: show, lecture } = this
    const { scenes } = lecture
    const { at, press, blank } = show
    const places = this._ready ? [at - 1, at, at + 1].filter((place) => place in scenes) : [at]
    return html`
      <main
        tabindex="-1"
        aria-label=${say('lecture.stage')}
        ?data-idle=${this._idle}
        @pointermove=${this.#wake}
        @pointerdown=${this.#wake}
        @focusin=${this.#wake}
      >
        <div class="scenes">
          ${repeat(
            places,
            (place) => scenes[place],
            (place) => this.#stage(place),
          )}
        </div>
        ${this._notes ? html`<p class="note">${scenes[at].note.trim() || say('lecture.noNote')}</p>` : nothing}
        <div class="foot">
          <span>${say('lecture.at', { at: at + 1, of: scenes.length })}</span>
          <tack-press-marks .made=${press} .count=${pressesOf(scenes[at]).length}></tack-press-marks>
        </div>
        <div class="controls">
          ${
            this._told === null
              ? nothing
              : html`<p class="told" role="alert">
                  ${say(this._told)}
                  ${
                    this._told === 'lecture.blocked'
                      ? html`<button type="button" @click=${() => this.#showNotes(true)}>
                          ${say('lecture.notesInstead')}
                        </button>`
                      : nothing
                  }
                </p>`
          }
          <tack-show-controls
            .session=${this.session}
            .show=${show}
            .ahead=${ahead(show, scenes)}
            .notes=${this._notes}
            .bench=${this.#benchesOf(scenes[at])[0]}
            @control=${this.#control}
          ></tack-show-controls>
        </div>
        ${
          blank
            ? html`<div class="blank ${blank}" @click=${() => this.#take({ kind: 'blank', colour: blank })}></div>`
            : nothing
        }
      </main>
      <p class="unseen" role="status">${this._said}</p>
    `
  }

  #stage(place: number) {
    const { at, press, spot } = this._show
    const scene = this.lecture.scenes[place]
    const isShown = place === at
    return html`<tack-scene-stage
      class=${isShown ? 'shown' : 'waiting'}
      .scene=${scene}
      .benches=${this.#benchesOf(scene)}
      .press=${isShown ? press : place < at ? pressesOf(scene).length : 0}
      .spot=${isShown ? spot : null}
      @spot=${({ unit }: SpotEvent) => this.#take({ kind: 'spot', unit })}
    ></tack-scene-stage>`
  }

  #benchesOf(scene: Scene): Session[] {
    let benches = this.#benches.get(scene)
    if (!benches) {
      benches = openScene(scene, this.session.look)
      for (const bench of benches) bench.play({ kind: 'scrub', phase: restingPhase(scene, 0) })
      this.#benches.set(scene, benches)
    }
    return benches
  }

  #take(event: ShowEvent): void {
    const before = this._show
    if (event.kind === 'back' && before.press === 0 && !before.blank && this.#asPrepared()) return
    const show = step(before, event, this.lecture.scenes)
    if (show === before) return
    this._show = show
    this._told = null
    this.#arrive(before)
  }

  /** Brings the benches to where the show is, and says what is to be said. */
  #arrive(before: Show | null): void {
    const { _show: show, lecture } = this
    const scene = lecture.scenes[show.at]
    const benches = this.#benchesOf(scene)
    if (before?.at !== show.at) {
      if (before) this.#asPrepared(before.at)
      for (const end of this.#clocks) end()
      this.#clocks = benches.map(runClock)
      this._ready = false
      window.clearTimeout(this.#readying)
      this.#readying = window.setTimeout(() => (this._ready = true), readyAfter)
      this.#rememberPlace()
    }
    if (before?.at !== show.at || before.press !== show.press) {
      const nip = before?.at === show.at && before.press < show.press && pressesOf(scene)[before.press] === 'nip'
      for (const bench of benches) this.#move(bench, scene, nip)
    }
    if (before && before.spot !== show.spot) for (const bench of benches) this.#lookAt(bench, scene)
    this._said = saidOf(before, show, lecture.scenes, (each) => this.#benchesOf(each))
    this.#tellSpeaker()
  }

  #move(bench: Session, scene: Scene, plays: boolean): void {
    bench.play({ kind: 'scrub', phase: plays ? 0 : restingPhase(scene, this._show.press) })
    if (plays) bench.play({ kind: 'step nip', atOnce: prefersStill() })
    // A nip that is over at once has moved nothing but the phase, of which only pictures hear.
    bench.lookWith({})
  }

  /** What if it went first? The ink in the light goes one unit earlier or later, and the scene is asked anew. */
  #carry(by: -1 | 1): void {
    const { at, spot, blank } = this._show
    const scene = this.lecture.scenes[at]
    const [bench] = this.#benchesOf(scene)
    const { inks } = bench.setUp
    if (spot === null || blank || !(spot + by in inks) || bench.printing) return
    const { name } = inks[spot]
    bench.change({ kind: 'move ink', from: spot, to: spot + by })
    this._show = { ...this._show, spot: spot + by, press: 0 }
    for (const each of this.#benchesOf(scene)) {
      each.play({ kind: 'look at unit', unit: scene.view.unit ?? each.setUp.inks.length - 1 })
      this.#move(each, scene, false)
    }
    this._said = say('lecture.carried', { name, unit: spot + by + 1, of: inks.length })
    this.#tellSpeaker()
  }

  /** Takes back what was tried in a scene; false where nothing was. */
  #asPrepared(at = this._show.at): boolean {
    const scene = this.lecture.scenes[at]
    const [bench] = this.#benchesOf(scene)
    if (!isTried(bench, scene)) return false
    bench.change({ kind: 'load', given: writeSetUp(scene.setUp) })
    this._show = { ...this._show, spot: this._show.at === at ? null : this._show.spot }
    this.#lookAt(bench, scene)
    this.#move(bench, scene, false)
    this._said = say('lecture.asPrepared')
    return true
  }

  /** On the press line a unit is put in the light where it stands; section and loupe go to its nip. */
  #lookAt(bench: Session, { picture, view }: Scene): void {
    if (picture === 'line' || picture === 'ladder' || picture === 'words') return
    const { spot } = this._show
    bench.play({ kind: 'look at unit', unit: spot ?? view.unit ?? bench.setUp.inks.length - 1 })
  }

  #tellSpeaker(): void {
    this.#wire?.say(stateOf(this._show, this.lecture.scenes, this.#begun.began))
  }

  /** So that a page loaded again goes on where it was. */
  #rememberPlace(): void {
    history.replaceState(null, '', `#view=lecture&scene=${this._show.at + 1}`)
  }

  /** The page, which hears of the address first, has read it. */
  readonly #goToAddress = (): void => {
    const { view, scene } = this.session.look
    if (view !== 'lecture' || scene === null) return
    this.#take({ kind: 'go to', at: scene })
    this.#rememberPlace()
  }

  #openSpeaker(): void {
    const opened = window.open(
      speakerAddress(this.#begun.id),
      `tackstair ${this.#begun.id}`,
      'popup,width=760,height=620',
    )
    if (!opened) {
      this._told = 'lecture.blocked'
      return
    }
    this._told = null
    if (this.#wire) this.#wire.partner = opened
  }

  #showNotes(shown: boolean): void {
    this._notes = shown
    this._told = null
  }

  #leave(): void {
    this.#wire?.say({ kind: 'left' })
    endLecture()
    if (document.fullscreenElement) void document.exitFullscreen()
    this.dispatchEvent(new CustomEvent('left', { detail: this._show.at }))
  }

  async #fillScreen(): Promise<void> {
    if (!(await turnFullScreen())) this._told = 'lecture.noFullScreen'
  }

  readonly #control = ({ control }: ControlEvent): void => {
    switch (control.kind) {
      case 'leave':
        this.#leave()
        break
      case 'speaker':
        this.#openSpeaker()
        break
      case 'notes':
        this.#showNotes(!this._notes)
        break
      case 'carry':
        this.#carry(control.by)
        break
      case 'full screen':
        void this.#fillScreen()
        break
      default:
        this.#take(control)
    }
  }

  /** Who goes on with the clicker after a look for a button looks at the picture again, and so do all others. */
  #clear(): void {
    if (this.renderRoot instanceof ShadowRoot && this.renderRoot.activeElement?.localName !== 'tack-show-controls')
      return
    this.renderRoot.querySelector<HTMLElement>('main')?.focus()
    window.clearTimeout(this.#idling)
    this._idle = true
  }

  readonly #wake = (): void => {
    this._idle = false
    window.clearTimeout(this.#idling)
    this.#idling = window.setTimeout(() => (this._idle = true), idleAfter)
  }

  readonly #key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey) return
    const { key } = event
    const isOwn = pressable(event)
    const [target] = event.composedPath()
    // A list of choices and an open dialog have keys of their own.
    if (target instanceof Element && (target.matches('select') || target.closest('dialog'))) return
    if (key === 'Escape') this.#leave()
    else if (event.shiftKey && (key === 'ArrowLeft' || key === 'ArrowRight')) this.#carry(key === 'ArrowLeft' ? -1 : 1)
    else if (/^[0-8]$/.test(key)) this.#take({ kind: 'spot', unit: key === '0' ? null : Number(key) - 1 })
    else if (key !== 'F5') {
      const meant = keyMeant(key)
      if (!meant || (isOwn && (key === ' ' || key === 'Enter'))) return
      this.#take(eventOf(meant))
      this.#clear()
    }
    event.preventDefault()
  }
}

customElements.define('tack-lecture-show', LectureShow)
