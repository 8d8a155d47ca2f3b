/** The strip of the pick test drawn, with its torn spots; a press on it moves the mark. Fires `mark` with mm from the start. */
import { LitElement, css, html, nothing, svg } from 'lit'
import type { PickTest, TornSpot } from '../../physics/pick-test.ts'
import { placeOf, strip } from '../../physics/pick-test.ts'
import { say, sayNumber } from '../say.ts'
import { roundTicks } from './line-plot.ts'

export class MarkEvent extends Event {
  /** mm from the start */
  readonly place: number

  constructor(place: number) {
    super('mark')
    this.place = place
  }
}

/** px of the drawing for a mm of strip */
const perMm = 4
const breadth = 72
const top = 18

export class PickStrip extends LitElement {
  static override properties = { test: { attribute: false }, torn: { attribute: false }, place: { type: Number } }
  static override styles = css`
    svg {
      display: block;
      /* As all pictures, from left to right in every language. */
      direction: ltr;
      width: 100%;
      max-width: 62.5rem;
      height: auto;
      cursor: ew-resize;
      touch-action: pan-y;
    }
    .paper {
      fill: var(--paper);
      stroke: #857e72;
    }
    circle {
      fill: #2a2927;
    }
    .mark {
      stroke: var(--graphite);
      stroke-width: 3;
    }
    .through {
      stroke: #0a6358;
      stroke-width: 2;
      stroke-dasharray: 6 4;
    }
    .tick {
      stroke: var(--edge);
    }
    text {
      fill: var(--soft);
      font-size: 15px;
      text-anchor: middle;
    }
    @media (max-width: 43.75em) {
      text {
        font-size: 28px;
      }
    }
  `

  declare test: PickTest
  declare torn: readonly TornSpot[]
  /** mm from the start */
  declare place: number

  override render() {
    const { test, torn, place } = this
    const length = strip.length * perMm
    const x = place * perMm
    const velocities = roundTicks(0, test.endVelocity).filter((each) => each > 0 && each <= test.endVelocity)
    return html`<svg
      viewBox="-8 0 ${length + 16} ${top + breadth + 62}"
      role="img"
      aria-label=${say('rig.pick.strip', { length: strip.length, velocity: test.endVelocity, torn: torn.length })}
      @pointerdown=${this.#down}
      @pointermove=${this.#move}
    >
      <rect class="paper" x="0" y=${top} width=${length} height=${breadth}></rect>
      ${torn.map((spot) => svg`<circle cx=${spot.place * perMm} cy=${top + 3 + spot.across * (breadth - 6)} r="2.4"></circle>`)}
      ${velocities.map((velocity) => {
        const at = placeOf(test, velocity) * perMm
        return svg`<line class="tick" x1=${at} x2=${at} y1=${top + breadth} y2=${top + breadth + 6}></line>
          <text x=${at} y=${top + breadth + 26}>${sayNumber(velocity, 0, 1)}</text>`
      })}
      <text x=${length / 2} y=${top + breadth + 52}>${say('rig.pick.tableSpeed')}</text>
      ${
        Number.isFinite(place)
          ? svg`<path class="mark" d="M${x} ${top} v-14 m-6 6 l6 8 l6 -8" fill="none"></path>
              <line class="through" x1=${x} x2=${x} y1=${top} y2=${top + breadth}></line>`
          : nothing
      }
    </svg>`
  }

  #down(event: PointerEvent): void {
    if (event.button !== 0) return
    ;(event.currentTarget as SVGSVGElement).setPointerCapture(event.pointerId)
    this.#mark(event)
  }

  #move(event: PointerEvent): void {
    if ((event.currentTarget as SVGSVGElement).hasPointerCapture(event.pointerId)) this.#mark(event)
  }

  #mark(event: PointerEvent): void {
    const box = (event.currentTarget as SVGSVGElement).getBoundingClientRect()
    const length = strip.length * perMm
    const place = (((event.clientX - box.left) / box.width) * (length + 16) - 8) / perMm
    this.dispatchEvent(new MarkEvent(Math.round(Math.min(strip.length, Math.max(0, place)))))
  }
}

customElements.define('tack-pick-strip', PickStrip)
