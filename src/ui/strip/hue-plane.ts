/** The a*, b* plane: an arrow from the published aim to the patch as printed, among the set's own solids and overprints. */
import { LitElement, css, html, nothing, svg } from 'lit'
import { aimsNamed } from '../../colour/published-aim.ts'
import type { HueArrow } from '../../measure/hue-arrow.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'

/** Length of the arrow's head, in units of a* and b*, where the arrow is long enough for it. */
const longestHead = 9
/** Half the side of the plane, in units of a* and b*: just beyond the most vivid published solid. */
const reach = 116
/** The chromatic colours of a set in the order of their hues. */
const ring = ['M', 'MY', 'Y', 'CY', 'C', 'CM'] as const
/** Length of the arrow from which it needs no closer view; what fits into that view, and how much closer it is. */
const hardToSee = 18
const side = 68
const times = 3
/** Length of the arrow, in the same units, below which a head on it would hide it. */
const shortest = 3

export class HuePlane extends LitElement {
  static override properties = { arrow: { attribute: false } }
  static override styles = [
    sharedStyles,
    css`
      svg {
        display: block;
        width: 100%;
        height: auto;
      }
      .axis {
        stroke: var(--edge);
      }
      .ring {
        fill: none;
        stroke: var(--edge);
        stroke-dasharray: 3 3;
      }
      .aim {
        fill: var(--field);
        stroke: var(--graphite);
      }
      .sample,
      .tip {
        fill: var(--graphite);
      }
      .arrow {
        stroke: var(--graphite);
      }
      .close {
        fill: var(--field);
        stroke: var(--edge);
      }
      text {
        fill: var(--soft);
        font-size: 11px;
      }
    `,
  ]

  declare arrow: HueArrow

  override render() {
    const { aim, sample, set } = this.arrow
    const [, a1, b1] = aim
    const [, a2, b2] = sample
    const length = Math.hypot(a2 - a1, b2 - b1)
    const corners = ring.map((patch) => aimsNamed(set)?.Lab[patch] ?? [0, 0, 0])
    return html`<svg
      viewBox="${-reach} ${-reach} ${2 * reach} ${2 * reach}"
      role="img"
      aria-label=${say('strip.plane', {
        set,
        aimA: sayNumber(a1, 0),
        aimB: sayNumber(b1, 0),
        a: sayNumber(a2, 0),
        b: sayNumber(b2, 0),
      })}
    >
      <line class="axis" x1=${-reach} x2=${reach}></line>
      <line class="axis" y1=${-reach} y2=${reach}></line>
      <text x=${reach - 2} y="22" text-anchor="end">${say('strip.plane.right')}</text>
      <text x=${-reach + 4} y="-4">${say('strip.plane.left')}</text>
      <text x="4" y=${-reach + 12}>${say('strip.plane.up')}</text>
      <text x="4" y=${reach - 6}>${say('strip.plane.down')}</text>
      <polygon class="ring" points=${corners.map(([, a, b]) => `${String(a)},${String(-b)}`).join(' ')}></polygon>
      ${corners.map(([, a, b], at) => svg`<text x=${1.17 * a} y=${-1.17 * b + 4} text-anchor="middle">${ring[at]}</text>`)}
      ${this.#arrow(1)} ${length >= shortest && length < hardToSee ? this.#close() : nothing}
    </svg>`
  }

  /** From the aim to the sample, lines and marks drawn `finer` times smaller than they are in the whole plane. */
  #arrow(finer: number) {
    const [, a1, b1] = this.arrow.aim
    const [, a2, b2] = this.arrow.sample
    const length = Math.hypot(a2 - a1, b2 - b1)
    const head = Math.min(longestHead / finer, 0.7 * length)
    const turn = (Math.atan2(b1 - b2, a2 - a1) * 180) / Math.PI
    return svg`<g stroke-width=${2 / finer}>
      <line class="arrow" x1=${a1} y1=${-b1} x2=${a2} y2=${-b2}></line>
      <circle class="aim" cx=${a1} cy=${-b1} r=${3 / finer}></circle>
      ${
        length < shortest
          ? svg`<circle class="sample" cx=${a2} cy=${-b2} r=${2 / finer}></circle>`
          : svg`<path
              class="tip"
              d="M0 0 l${-head} ${-0.4 * head} v${0.8 * head} z"
              transform="translate(${a2} ${-b2}) rotate(${turn})"
            ></path>`
      }
    </g>`
  }

  /** A short arrow once more, closer, in the corner where no colour of a set lies. */
  #close() {
    const [, a1, b1] = this.arrow.aim
    const [, a2, b2] = this.arrow.sample
    const corner = reach - side - 2
    const middle = corner + side / 2
    return svg`<rect class="close" x=${corner} y=${corner} width=${side} height=${side}></rect>
      <text x=${corner + 4} y=${corner + side - 5}>${say('strip.plane.close', { times })}</text>
      <g
        transform="translate(${middle} ${middle}) scale(${times}) translate(${-(a1 + a2) / 2} ${(b1 + b2) / 2})"
      >
        ${this.#arrow(times)}
      </g>`
  }
}

customElements.define('tack-hue-plane', HuePlane)
