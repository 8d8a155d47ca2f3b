/**
 * A canvas of the bench: fetches its view when first seen, and draws whenever session, size or phase has changed, once
 * a frame at most. What it shows stands in its label and, in numbers, in the tables of the page.
 */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import { runDrawingParts } from '../view/drawing-parts.ts'
import type { BenchPicture, View } from '../view/picture.ts'
import { benchPicture, leaveCells, prepareCells } from './bench-picture.ts'
import { drawNoMore, drawSoon, enough } from './draw-soon.ts'
import { dressed } from './dress.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export abstract class PictureElement extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    magnified: { type: Number },
    _state: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        position: relative;
        min-height: 0;
      }
      .host {
        position: absolute;
        inset: 0;
        overflow: hidden;
        /* The press runs from left to right in every language. */
        direction: ltr;
      }
      p {
        position: absolute;
        top: 8px;
        inset-inline-start: 8px;
        color: var(--soft);
        font-size: 0.9375rem;
      }
    `,
  ]

  /** px on the page for each px of the drawing; null where the picture is as it is on the bench */
  declare magnified: number | null
  declare _state: { kind: 'waiting' | 'drawn' } | { kind: 'failed'; reason: string }
  #view: View | undefined
  #unsubscribeFrames: (() => void) | undefined
  #observer: ResizeObserver | undefined
  #waits = false
  /** the fetching of the view that is under way or done; another one each time the element comes into the page */
  #opening: object | null = null

  constructor() {
    super()
    this.magnified = null
    this._state = { kind: 'waiting' }
  }

  /** Fetches the view and puts it into `host`. */
  protected abstract open(host: HTMLElement): Promise<View>
  /** What is drawn. A magnified picture has large letters already, and stands alone. */
  protected picture(): BenchPicture {
    const picture = benchPicture(this.session)
    const { magnified } = this
    return magnified === null ? picture : { ...picture, magnified, largeType: false, cut: false }
  }
  /** Reckons what is drawn, for as long as it may; whether all is there. */
  protected prepare(mayGoOn: () => boolean): boolean {
    return prepareCells(this.session, mayGoOn)
  }
  /** What the picture shows, in one sentence. */
  protected abstract summary(): string

  override connectedCallback(): void {
    super.connectedCallback()
    this.#unsubscribeFrames = this.session.subscribeToFrames(this.#draw)
    document.addEventListener(dressed, this.#draw)
    this.#observer = new ResizeObserver(() => void this.#resized())
    this.#observer.observe(this)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#unsubscribeFrames?.()
    document.removeEventListener(dressed, this.#draw)
    this.#observer?.disconnect()
    drawNoMore(this.#drawNow)
    leaveCells(this.session)
    this.#view?.destroy()
    this.#view = undefined
    this.#opening = null
    this._state = { kind: 'waiting' }
  }

  override render() {
    const state = this._state
    return html`<div class="host" role="img" aria-label=${this.summary()}></div>
      ${state.kind === 'waiting' ? html`<p>${say('bench.loading')}</p>` : nothing}
      ${state.kind === 'failed' ? html`<p>${say('bench.noPicture', { reason: state.reason })}</p>` : nothing}`
  }

  override updated(): void {
    this.#draw()
  }

  async #resized(): Promise<void> {
    if (this.#view) {
      this.#view.resize()
      this.#draw()
    } else if (!this.#opening && this.clientWidth > 0) {
      const opening = (this.#opening = {})
      const isLeft = () => this.#opening !== opening
      await this.updateComplete
      try {
        await runDrawingParts()
        const view = await this.open(this.renderRoot.querySelector('.host') as HTMLElement)
        // It was taken out of the page meanwhile, and may be back with a view of its own.
        if (isLeft()) {
          view.destroy()
          return
        }
        this.#view = view
        this._state = { kind: 'drawn' }
      } catch (error) {
        if (isLeft()) return
        this._state = { kind: 'failed', reason: error instanceof Error ? error.message : String(error) }
      }
    }
  }

  readonly #draw = (): void => {
    if (this.#view && this.clientWidth > 0) drawSoon(this.#drawNow)
  }

  /** What took long to reckon is kept, and drawn in the frame after, so that the page answers in between. */
  readonly #drawNow = (): void => {
    const begun = performance.now()
    if (!this.prepare(() => performance.now() - begun < enough)) {
      drawSoon(this.#drawNow)
      return
    }
    const picture = this.picture()
    this.#waits = !this.#waits && performance.now() - begun > enough
    if (this.#waits) drawSoon(this.#drawNow)
    else this.#view?.draw(picture)
  }
}
