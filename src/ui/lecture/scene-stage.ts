/**
 * One scene as the class sees it: its sentence, its picture or the two side by side, and its number. Everything grows
 * with the element, and every part has its place whether it is there or not, so that nothing jumps from scene to scene.
 */
import type { PropertyDeclarations } from 'lit'
import { LitElement, html, nothing } from 'lit'
import { tellNip } from '../../press/tell.ts'
import { pictureOf, seenAfter } from '../../session/lecture-show.ts'
import type { Scene } from '../../session/scene.ts'
import { isTried } from '../../session/scene-session.ts'
import type { Session } from '../../session/session.ts'
import { inkLetters } from '../../session/letters.ts'
import '../ink-stair.ts'
import '../line-picture.ts'
import '../loupe-picture.ts'
import { colourSolids } from '../orders/colour-solids.ts'
import { miniStair, miniStairStyles } from '../mini-stair.ts'
import { orderTreads } from '../orders/order-words.ts'
import { say, sayName } from '../say.ts'
import '../section-picture.ts'
import type { Drawing } from '../../view/svg-file.ts'
import { sharedStyles } from '../shared-styles.ts'
import { textScale } from '../text-scale.ts'
import { numberWords } from './number-words.ts'
import { plainText } from './plain-text.ts'
import { sceneStageStyles } from './scene-stage-styles.ts'
import './spot-light.ts'

/** px that letters of a picture have before they are magnified (letterSize), and share of the text's size they get. */
const pictureLetters = 13
const shareOfText = 0.86

/** Letters: a longer sentence is set smaller. */
const longSentence = 72

/** What the pictures of scenes are called among those of the bench. */
const onPaperAs = { section: 'section', loupe: 'loupe', line: 'line', ladder: 'stair', words: undefined } as const

export class SceneStage extends LitElement {
  static override properties: PropertyDeclarations = {
    scene: { attribute: false },
    benches: { attribute: false },
    press: { type: Number },
    spot: { attribute: false },
    small: { type: Boolean, reflect: true },
    _size: { state: true },
  }
  static override styles = [sharedStyles, miniStairStyles, sceneStageStyles]

  declare scene: Scene
  /** one for each set-up */
  declare benches: readonly Session[]
  /** presses made */
  declare press: number
  /** unit in the light, from 0 */
  declare spot: number | null
  /** a preview, whose letters may be smaller than a hall could read */
  declare small: boolean
  /** px of the pictures, and of the text */
  declare protected _size: { width: number; height: number; text: number }

  #unsubscribe: (() => void)[] = []
  #observer: ResizeObserver | undefined
  #measured: Element | null = null

  constructor() {
    super()
    this.press = 0
    this.spot = null
    this.small = false
    this._size = { width: 1, height: 1, text: 28 }
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribe = this.benches.map((bench) => bench.subscribe(() => this.requestUpdate()))
    this.#observer = new ResizeObserver(() => this.#measure())
    this.#observer.observe(this)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    for (const end of this.#unsubscribe) end()
    this.#observer?.disconnect()
  }

  override render() {
    const { scene, benches } = this
    const picture = pictureOf(scene)
    // Of two side by side, the words over it say what was tried.
    const name = (benches.length > 1 ? null : this.#tried) ?? scene.name.trim()
    const title = name.length > longSentence ? 'title long' : 'title'
    return html`<div class="scene" data-picture=${picture} data-sides=${benches.length}>
      ${this.small ? html`<p class=${title}>${name}</p>` : html`<h2 class=${title}>${name}</h2>`}
      ${
        picture === 'words'
          ? nothing
          : benches.map(
              (bench, side) =>
                html`<section class="side" aria-label=${this.#caption(side) || nothing}>
                  ${this.#side(bench, side)}
                </section>`,
            )
      }
    </div>`
  }

  readonly ofOthers = true

  get pictureName(): string {
    return this.scene.name.trim() || say('lecture.sideBySide')
  }

  get summary(): string {
    const sides = this.benches.map((bench, side) => {
      const inks = bench.setUp.inks.map(({ name, tack }) => say('lecture.inkTack', { name, tack })).join(', ')
      return [this.#caption(side), inks].filter(Boolean).join(': ')
    })
    return `${say('lecture.sideBySide')}. ${sides.join('; ')}.`
  }

  /** Both sides in one picture; the picture of a single bench is among the bench's own. */
  get printed(): (() => Promise<Drawing>) | undefined {
    const name = onPaperAs[pictureOf(this.scene)]
    if (name === undefined || this.benches.length < 2) return undefined
    return async () => {
      const [{ benchDrawing }, { sideBySide, sideWide }] = await Promise.all([
        import('../pictures/bench-offers.ts'),
        import('../pictures/side-by-side.ts'),
      ])
      // A press line needs the whole width.
      const below = name === 'line'
      return sideBySide(
        this.benches.map((bench, side) => ({
          caption: this.#caption(side),
          drawing: benchDrawing(bench, name, below ? undefined : sideWide),
        })),
        below ? 'below' : 'beside',
      )
    }
  }

  #side(bench: Session, side: number) {
    return html`${this.benches.length > 1 ? this.#head(bench, side) : nothing}
      <div class="picture">
        ${bench.printing ? html`<p>${say('bench.printing', { sheet: bench.printing.sheet, of: bench.printing.of })}</p>` : this.#picture(bench)}
      </div>
      ${this.#number(bench, side)}`
  }

  /** Which order it is, as a small stair, and the words over it. */
  #head(bench: Session, side: number) {
    const { inks } = bench.setUp
    const treads = orderTreads([...inks.keys()], inks, colourSolids(bench))
    return html`<div class="head">
      ${miniStair(treads)}
      <p>${this.#caption(side)}</p>
    </div>`
  }

  /** The order that stands on the first bench instead of the prepared one. */
  get #tried(): string | null {
    const [bench] = this.benches
    if (!isTried(bench, this.scene)) return null
    return say('lecture.tried', { inks: bench.setUp.inks.map(({ name }) => sayName(name)).join(', ') })
  }

  #caption(side: number): string {
    if (side === 0 && this.#tried !== null) return this.#tried
    return (side === 0 ? this.scene.caption : this.scene.beside?.caption) ?? ''
  }

  #picture(bench: Session) {
    const magnified = (shareOfText * this._size.text) / pictureLetters
    const { spot } = this
    switch (pictureOf(this.scene)) {
      case 'section':
        return html`<tack-section-picture .session=${bench} .magnified=${magnified}></tack-section-picture>
          ${this.#told(bench)}`
      case 'loupe':
        return html`<tack-loupe-picture .session=${bench} .magnified=${magnified}></tack-loupe-picture>
          ${this.#told(bench)}`
      case 'line':
        return html`<tack-line-picture .session=${bench} .magnified=${magnified}></tack-line-picture>
          <tack-spot-light
            .session=${bench}
            .spot=${spot}
            .magnified=${magnified}
            .size=${this._size}
          ></tack-spot-light>`
      case 'ladder':
        return this.#stair(bench)
      case 'words':
        return nothing
    }
  }

  #stair({ setUp, colours }: Session) {
    const { inks } = setUp
    const letters = inkLetters(inks.map(({ name }) => name))
    const treads = inks.map(({ name, tack }, unit) => ({
      name,
      letter: letters[unit],
      tack,
      colour: colours.solids[unit],
      unit,
    }))
    const named = inks.map(({ name, tack }) => say('lecture.inkTack', { name, tack })).join(', ')
    return html`<div class="stair-room" role="img" aria-label=${say('lecture.ladderPicture', { inks: named })}>
      <tack-ink-stair
        .treads=${treads}
        .carried=${null}
        .current=${-1}
        .named=${true}
        .spot=${this.spot}
      ></tack-ink-stair>
    </div>`
  }

  /** The picture in words, for those who are read to. */
  #told({ setUp, results, patch, playback }: Session) {
    const names = setUp.inks.map(({ name }) => name)
    const told = tellNip(results.accounts(patch)[playback.unit], names)
    return html`<p class="unseen">
      ${playback.phase === 0 ? '' : told.map(({ message, values }) => plainText(say(message, { ...values }))).join(' ')}
    </p>`
  }

  #number(bench: Session, side: number) {
    const { scene, press } = this
    if (!scene.number) return html`<p class="number"></p>`
    const isShown = seenAfter(scene, press).number && !bench.playback.playing && !bench.printing
    if (isShown) {
      const read = numberWords(bench, scene.number)
      if (!read) return html`<p class="number">${say('lecture.said.none')}</p>`
      return html`<p class="number"><b>${read.figure}</b> <span>${read.words}</span></p>`
    }
    if (scene.waits !== true) return html`<p class="number"></p>`
    const question = scene.question?.trim() || say('lecture.usualQuestion')
    // Two sides are asked one question.
    return html`<p class="number">
      <b aria-hidden="true">${say('lecture.hidden')}</b> ${side === 0 ? html`<span>${question}</span>` : nothing}
    </p>`
  }

  override updated(): void {
    const picture = this.renderRoot.querySelector('.picture')
    if (picture && picture !== this.#measured) this.#observer?.observe(picture)
    this.#measured = picture
    const stair = this.renderRoot.querySelector<HTMLElement>('tack-ink-stair')
    // The stair is laid out for a desk; for a hall it is magnified as the pictures are.
    stair?.style.setProperty('zoom', String(this._size.text / (16 * textScale())))
  }

  #measure(): void {
    const picture = this.renderRoot.querySelector<HTMLElement>('.picture')
    const scene = this.renderRoot.querySelector<HTMLElement>('.scene')
    if (!scene) return
    const text = parseFloat(getComputedStyle(scene).fontSize)
    const { clientWidth: width = 1, clientHeight: height = 1 } = picture ?? {}
    const before = this._size
    if (before.width === width && before.height === height && before.text === text) return
    this._size = { width: Math.max(1, width), height: Math.max(1, height), text }
  }
}

customElements.define('tack-scene-stage', SceneStage)
