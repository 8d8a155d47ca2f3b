/**
 * The stair: every ink a tread at the height of its tack, first unit at the left. A wrong order is a step up. The rows
 * below say the same in words and fields, so this is a picture, with a pointer's way to carry treads about.
 */
import { LitElement, css, html, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import { CarryEvent, dragStarts } from './carry.ts'
import { say, sayName, sayNumber } from './say.ts'
import { sharedStyles } from './shared-styles.ts'

/** Share of the highest tread below which a tread has no room for its letter: two lines of text on the lowest stair. */
const lowBelow = 0.35

export interface Tread {
  name: string
  letter: string
  tack: number
  /** #rrggbb */
  colour: string
  /** its unit in the set-up, wherever it is being carried */
  unit: number
}

export class InkStair extends LitElement {
  static override properties = {
    treads: { attribute: false },
    carried: { attribute: false },
    current: { type: Number },
    named: { type: Boolean },
    spot: { type: Number },
  }
  static override styles = [
    sharedStyles,
    css`
      /* Left and right, not start and end: the units stand as the press line beside it has them, in every language. */
      .stair {
        position: relative;
        direction: ltr;
        height: var(--stair-height, clamp(6.5rem, calc(100dvh - 42rem), 11.875rem));
        border-bottom: 2px solid var(--graphite);
        touch-action: pan-y;
      }
      .tread {
        position: absolute;
        bottom: 0;
        left: calc(var(--place) * 100% / var(--count));
        width: calc(100% / var(--count));
        height: var(--height);
        border: 1px solid var(--edge);
        border-bottom: 0;
        border-top: 10px solid var(--ink);
        /* Ink as dark as its ground is seen by its edge. */
        box-shadow: 0 -1px 0 var(--edge);
        background: var(--field);
        font-size: 0.875rem;
        line-height: 1.25rem;
        text-align: center;
        cursor: grab;
        user-select: none;
        transition:
          left var(--glide),
          height var(--glide);
      }
      .tread.carried {
        z-index: 1;
        outline: 3px solid var(--accent);
        cursor: grabbing;
      }
      .tack {
        position: absolute;
        right: 0;
        bottom: calc(100% + 10px);
        left: 0;
        font-size: 1rem;
        font-weight: 650;
      }
      .letter {
        display: block;
        padding-top: 4px;
        font-weight: 650;
      }
      .rise {
        position: absolute;
        top: -10px;
        left: -1px;
        width: 0.625rem;
        height: calc((100% + 0.6875rem) * var(--rise));
        background: repeating-linear-gradient(135deg, var(--graphite) 0 2px, var(--field) 2px 5px);
      }
      .current .letter::after {
        content: '';
        display: block;
        width: 1rem;
        margin: 2px auto 0;
        border-top: 3px solid var(--graphite);
      }
      .dimmed {
        opacity: 0.15;
      }
      /* No room on the tread: its letter stands beside the number. */
      .low .letter {
        position: absolute;
        right: 0;
        bottom: calc(100% + 10px);
        left: 50%;
        padding: 0;
        font-size: 1rem;
      }
      .low .tack {
        right: 50%;
      }
      .low .letter::after {
        display: none;
      }
      .name {
        display: block;
        overflow-wrap: anywhere;
      }
      .up {
        display: block;
        font-size: 0.8125rem;
      }
      @media (forced-colors: active) {
        .tread {
          color: var(--graphite);
          forced-color-adjust: none;
        }
        .tack {
          color: CanvasText;
        }
      }
    `,
  ]

  /** in the order shown */
  declare treads: Tread[]
  /** unit being carried, or null */
  declare carried: number | null
  /** unit looked at */
  declare current: number
  /** whether treads have their inks' names on them */
  declare named: boolean
  /** unit that alone stands in the light */
  declare spot: number | null | undefined

  #pressed: { unit: number; x: number; carrying: boolean } | null = null

  override render() {
    const { spot } = this
    const isDimmed = ({ unit }: Tread) => typeof spot === 'number' && unit !== spot
    return html`<div
      class="stair"
      aria-hidden="true"
      @pointermove=${this.#move}
      @pointerup=${this.#up}
      @pointercancel=${this.#cancel}
    >
      ${repeat(
        this.treads,
        (tread) => tread.name,
        (tread, place) => {
          const rise = place === 0 ? 0 : tread.tack - this.treads[place - 1].tack
          const isLow = tread.tack < lowBelow * Math.max(...this.treads.map(({ tack }) => tack))
          const classes = [
            'tread',
            tread.unit === this.carried && 'carried',
            tread.unit === this.current && 'current',
            isDimmed(tread) && 'dimmed',
            isLow && 'low',
          ]
          return html`<div
            class=${classes.filter(Boolean).join(' ')}
            title=${sayName(tread.name)}
            @pointerdown=${(event: PointerEvent) => this.#down(event, tread.unit)}
          >
            ${rise > 0 ? html`<span class="rise"></span>` : nothing}
            <span class="tack">${sayNumber(tread.tack, 0, 1)}</span>
            <span class="letter">${tread.letter}</span>
            ${this.named ? html`<span class="name">${tread.name}</span>` : nothing}
            ${rise > 0 ? html`<span class="up">${say('bench.stepUp', { by: sayNumber(rise, 0, 1) })}</span>` : nothing}
          </div>`
        },
      )}
    </div>`
  }

  override updated(): void {
    const treads = this.renderRoot.querySelectorAll<HTMLElement>('.tread')
    // Heights are true to scale from nothing, with room above the highest for its number.
    const highest = Math.max(...this.treads.map(({ tack }) => tack))
    const height = (tack: number) => (100 * tack) / highest
    this.treads.forEach((tread, place) => {
      const { style } = treads[place]
      style.setProperty('--place', String(place))
      style.setProperty('--count', String(this.treads.length))
      style.setProperty('--height', `calc(${height(tread.tack) / 100} * (100% - 24px))`)
      style.setProperty('--ink', tread.colour)
      const before = place > 0 ? this.treads[place - 1].tack : tread.tack
      style.setProperty('--rise', String(Math.max(0, (tread.tack - before) / tread.tack)))
    })
  }

  #down(event: PointerEvent, unit: number): void {
    if (event.button !== 0) return
    const stair = this.renderRoot.querySelector('.stair') as HTMLElement
    stair.setPointerCapture(event.pointerId)
    this.#pressed = { unit, x: event.clientX, carrying: false }
  }

  #move(event: PointerEvent): void {
    const pressed = this.#pressed
    if (!pressed) return
    if (!pressed.carrying && Math.abs(event.clientX - pressed.x) < dragStarts) return
    if (!pressed.carrying) {
      pressed.carrying = true
      this.dispatchEvent(new CarryEvent({ kind: 'lift', unit: pressed.unit }))
    }
    const { left, width } = this.getBoundingClientRect()
    const place = Math.floor(((event.clientX - left) / width) * this.treads.length)
    this.dispatchEvent(new CarryEvent({ kind: 'to', place }))
  }

  #up(): void {
    if (this.#pressed?.carrying) this.dispatchEvent(new CarryEvent({ kind: 'set down' }))
    else if (this.#pressed) this.dispatchEvent(new CustomEvent('look', { detail: this.#pressed.unit }))
    this.#pressed = null
  }

  #cancel(): void {
    if (this.#pressed?.carrying) this.dispatchEvent(new CarryEvent({ kind: 'return' }))
    this.#pressed = null
  }
}

customElements.define('tack-ink-stair', InkStair)
