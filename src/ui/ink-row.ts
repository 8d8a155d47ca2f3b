/**
 * One ink of the ladder: a handle to carry it by, its tack, film and coverage, buttons to move it, and more. Keys on the
 * handle: Space lifts and sets down, arrows carry, Escape returns, a unit number sends it there.
 */
import type { TemplateResult } from 'lit'
import { html, nothing } from 'lit'
import type { Control } from '../lesson/control.ts'
import { ranges } from '../press/ranges.ts'
import type { Ink } from '../press/setup.ts'
import { fromShown, toShown } from '../session/measures.ts'
import type { CarryStep } from './carry.ts'
import { CarryEvent, dragStarts } from './carry.ts'
import './ink-details.ts'
import { inkRowStyles } from './ink-row-styles.ts'
import './number-field.ts'
import { say, sayName } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

/** What more there is to set of an ink. */
const details: readonly Control[] = ['unit temperature', 'unit dampening', 'inks']

export class InkRow extends SessionElement {
  static override properties = {
    unit: { type: Number },
    place: { type: Number },
    colour: {},
    carried: { type: Boolean, reflect: true },
    _open: { state: true },
  }
  static override styles = [sharedStyles, inkRowStyles]

  /** its unit in the set-up */
  declare unit: number
  /** where it is shown, which differs while it is carried */
  declare place: number
  declare colour: string
  declare carried: boolean
  declare _open: boolean

  constructor() {
    super()
    this._open = false
  }

  #dragging = false
  /** a drag ends with a click of the browser's own, which means nothing */
  #dragged = false

  get ink(): Ink | undefined {
    return this.session.setUp.inks[this.unit]
  }

  override render() {
    const { ink } = this
    if (!ink) return nothing
    const { name } = ink
    const film = this.session.look.measures.film
    const last = this.session.setUp.inks.length - 1
    const fixed = this.isClosed('order')
    const label = this.knows('tack', 'tack-number') ? 'bench.inkHandle' : 'bench.inkHandleAlone'
    return html`
      <div class="row">
        <button
          type="button"
          class="handle"
          aria-current=${this.session.playback.unit === this.unit}
          aria-label=${say(label, { unit: this.place + 1, name, tack: ink.tack })}
          aria-pressed=${this.carried ? 'true' : nothing}
          @click=${this.#look}
          @keydown=${this.#key}
          @keyup=${this.#keyUp}
          @pointerdown=${this.#down}
          @blur=${this.#blur}
        >
          <span class="number">${this.place + 1}</span>
          <span class="swatch"></span>
          <span class="name">${sayName(name)}</span>
        </button>
        ${
          this.knows('tack', 'tack-number')
            ? this.#field(
                say('bench.tack'),
                html`<tack-number-field
                  compact
                  start
                  .label=${say('bench.tackOf', { name })}
                  ?disabled=${this.isClosed('tack')}
                  .unit=${say('bench.tackUnits')}
                  .least=${ranges.tack.least}
                  .most=${ranges.tack.most}
                  .step=${ranges.tack.step}
                  .value=${ink.tack}
                  .offer=${(value: number) => this.#edit('tack', value)}
                ></tack-number-field>`,
              )
            : nothing
        }
        ${
          this.knows('form-roller')
            ? this.#field(
                say('bench.filmIn', { unit: say(`bench.unit.${film.unit}`) }),
                html`<tack-number-field
                  compact
                  .label=${say('bench.filmOf', { name })}
                  ?disabled=${this.isClosed('film')}
                  .unit=${say(`bench.unit.${film.unit}`)}
                  .least=${toShown(ranges.film.least, film)}
                  .most=${toShown(ranges.film.most, film)}
                  .step=${ranges.film.step}
                  .value=${toShown(ink.film, film)}
                  .offer=${(value: number) => this.#edit('film', fromShown(value, film))}
                ></tack-number-field>`,
              )
            : nothing
        }
        ${
          this.knows('coverage')
            ? this.#field(
                say('bench.coverageHead'),
                html`<tack-number-field
                  compact
                  .label=${say('bench.coverageOf', { name })}
                  ?disabled=${this.isClosed('coverage')}
                  .unit=${'%'}
                  .least=${100 * ranges.coverage.least}
                  .most=${100 * ranges.coverage.most}
                  .step=${5}
                  .decimals=${1}
                  .value=${100 * ink.coverage}
                  .offer=${(value: number) => this.#edit('coverage', value / 100)}
                ></tack-number-field>`,
              )
            : nothing
        }
        <div class="moves">
          ${
            !this.isShown('order')
              ? nothing
              : [this.#mover(-1, fixed || this.place === 0), this.#mover(1, fixed || this.place === last)]
          }
        </div>
        <button
          type="button"
          class="more"
          ?hidden=${!this.isShown(...details)}
          aria-expanded=${this._open}
          title=${say('bench.moreOf', { name })}
          @click=${() => (this._open = !this._open)}
        >
          <span aria-hidden="true">…</span>
        </button>
      </div>
      ${this._open ? html`<tack-ink-details .session=${this.session} .unit=${this.unit}></tack-ink-details>` : nothing}
    `
  }

  /** With its head above it where the ladder has no columns for heads; what is read out names the ink as well. */
  #field(head: string, field: TemplateResult) {
    return html`<div class="field"><span class="head" aria-hidden="true">${head}</span>${field}</div>`
  }

  #mover(places: -1 | 1, disabled: boolean) {
    const name = this.ink?.name ?? ''
    const label = say(places < 0 ? 'bench.moveUp' : 'bench.moveDown', { name })
    const to = this.place + places
    return html`<button
      type="button"
      ?disabled=${disabled}
      title=${label}
      @click=${() => this.#carry({ kind: 'send', unit: this.unit, place: to })}
    >
      <span aria-hidden="true">${places < 0 ? '▲' : '▼'}</span>
    </button>`
  }

  override updated(): void {
    this.style.setProperty('--ink', this.colour)
  }

  /** Moving an element in the page takes the focus from it. */
  focusHandle(): void {
    this.#handle.focus()
  }

  /** px from the top of the window to the middle of the row */
  get middle(): number {
    const { top, height } = this.#handle.getBoundingClientRect()
    return top + height / 2
  }

  get #handle(): HTMLElement {
    return this.renderRoot.querySelector('.handle') as HTMLElement
  }

  #edit(field: 'tack' | 'film' | 'coverage', value: number): string | null {
    return this.attempt({ kind: 'edit ink', unit: this.unit, field, value })
  }

  #carry(step: CarryStep): void {
    this.dispatchEvent(new CarryEvent(step))
  }

  #look(): void {
    if (this.#dragged) this.#dragged = false
    else this.session.play({ kind: 'look at unit', unit: this.unit })
  }

  #key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    const step = this.#stepFor(event.key)
    if (!step) return
    event.preventDefault()
    this.#carry(step)
  }

  #stepFor(key: string): CarryStep | null {
    if (key === ' ') return this.carried ? { kind: 'set down' } : { kind: 'lift', unit: this.unit }
    if (/^[1-9]$/.test(key)) return { kind: 'send', unit: this.unit, place: Number(key) - 1 }
    if (!this.carried) return null
    if (key === 'Escape') return { kind: 'return' }
    if (key === 'ArrowUp' || key === 'ArrowLeft') return { kind: 'by', places: -1 }
    if (key === 'ArrowDown' || key === 'ArrowRight') return { kind: 'by', places: 1 }
    return null
  }

  /** A button clicks itself when Space comes up; here Space lifts and sets down. */
  #keyUp(event: KeyboardEvent): void {
    if (event.key === ' ') event.preventDefault()
  }

  /** Rows change places under the pointer, so the page itself is listened to until it is let go. */
  #down(event: PointerEvent): void {
    if (event.button !== 0) return
    const pressed = new AbortController()
    const start = event.clientY
    this.#dragged = false
    this.#dragging = false
    const listen = (type: 'pointermove' | 'pointerup' | 'pointercancel', take: (event: PointerEvent) => void) =>
      document.addEventListener(type, take, { signal: pressed.signal })
    listen('pointermove', ({ clientY }) => this.#drag(clientY, start))
    listen('pointerup', () => this.#letGo(pressed, { kind: 'set down' }))
    listen('pointercancel', () => this.#letGo(pressed, { kind: 'return' }))
  }

  #drag(y: number, start: number): void {
    if (!this.#dragging && Math.abs(y - start) < dragStarts) return
    if (!this.#dragging) {
      this.#dragging = true
      this.#dragged = true
      this.#carry({ kind: 'lift', unit: this.unit })
    }
    this.dispatchEvent(new CustomEvent('drag-to', { bubbles: true, detail: y }))
  }

  #letGo(pressed: AbortController, step: CarryStep): void {
    pressed.abort()
    if (this.#dragging) this.#carry(step)
    this.#dragging = false
  }

  /** Whoever leaves a carried ink puts it back, unless the row itself has only moved in the page. */
  #blur(): void {
    if (!this.carried || this.#dragging) return
    void this.updateComplete.then(() => {
      setTimeout(() => {
        if (this.carried && this.shadowRoot?.activeElement !== this.#handle) this.#carry({ kind: 'return' })
      })
    })
  }
}

customElements.define('tack-ink-row', InkRow)
