/**
 * Which position does most harm, at a glance: a row for each ink, a column for each unit. From the mean score of all
 * orders, a solid block hangs down as deep as that ink on that unit costs, and an open one stands up as high as it helps.
 */
import { LitElement, css, html, svg } from 'lit'
import type { PositionScores } from '../../press/order-positions.ts'
import type { Ink } from '../../press/setup.ts'
import { inkLetters } from '../../session/letters.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { textScale } from '../text-scale.ts'
import { signed } from './order-words.ts'
import { ordersStyles } from './orders-styles.ts'

/** px: a row of the picture, and the head with the units' numbers. */
const row = 64
const head = 24
/** px: the picture's width, drawn without scaling so that its letters stay readable; below `narrow`, letters stand for names. */
const widest = 720
const narrow = 480

/** Points below which no position is worth naming as harmful. */
const worthNaming = 0.5

export class PositionPicture extends LitElement {
  static override properties = {
    inks: { attribute: false },
    colours: { attribute: false },
    positions: { attribute: false },
    _width: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    tableStyles,
    css`
      .picture {
        display: block;
        margin-top: 8px;
        font-size: 13px;
        fill: var(--graphite);
      }
      .base {
        stroke: var(--edge);
      }
      .harms {
        fill: var(--soft);
      }
      .worst {
        fill: var(--graphite);
        stroke: var(--graphite);
        stroke-width: 4;
      }
      .helps {
        fill: var(--field);
        stroke: var(--edge);
      }
      .number {
        text-anchor: middle;
        paint-order: stroke;
        stroke: var(--panel);
        stroke-width: 3px;
      }
      .loud {
        font-size: 15px;
        font-weight: 700;
      }
      .finding {
        font-size: 1.0625rem;
        font-weight: 650;
        line-height: 1.5rem;
      }
    `,
  ]

  /** as ranked: places are places in this list */
  declare inks: readonly Ink[]
  declare colours: ReadonlyMap<string, string>
  declare positions: PositionScores
  /** px where text has its usual size */
  declare _width: number
  #observer: ResizeObserver | undefined

  constructor() {
    super()
    this._width = widest
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#observer = new ResizeObserver(() => {
      if (this.clientWidth > 0) this._width = Math.min(widest, this.clientWidth / textScale())
    })
    this.#observer.observe(this)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#observer?.disconnect()
  }

  /** mean score of all orders: every order has every ink on one unit */
  get #mean(): number {
    const [first] = this.positions.mean
    return first.reduce((sum, score) => sum + score, 0) / first.length
  }

  override render() {
    const { worst } = this.positions
    const values = { ink: this.inks[worst.ink].name, unit: worst.unit + 1, loss: sayNumber(worst.loss, 1) }
    return html`
      <p class="finding">${say(worst.loss >= worthNaming ? 'orders.harmSentence' : 'orders.harmLess', values)}</p>
      ${this.#drawing()}
      <p class="note">${say('orders.harmKey')}</p>
      <details>
        <summary>${say('orders.harmTable')}</summary>
        <div class="scroll" tabindex="0" role="region" aria-label=${say('orders.harmTable')}>${this.#table()}</div>
      </details>
    `
  }

  #drawing() {
    const { mean: scores, worst } = this.positions
    const units = this.inks.length
    const whole = this._width
    const isNarrow = whole < narrow
    const names = isNarrow ? 44 : 104
    const letters = inkLetters(this.inks.map(({ name }) => name))
    const mean = this.#mean
    const most = Math.max(...scores.flat().map((score) => Math.abs(score - mean)), 1e-9)
    const wide = (whole - names) / units
    const reach = row / 2 - 8
    const cells = scores.flatMap((ofInk, ink) => {
      const base = head + row * (ink + 0.5)
      return ofInk.map((score, unit) => {
        const off = score - mean
        const height = (Math.abs(off) / most) * reach
        const x = names + unit * wide
        const isWorst = ink === worst.ink && unit === worst.unit
        const kind = off >= 0 ? 'helps' : isWorst ? 'worst' : 'harms'
        const y = off >= 0 ? base - height : base
        const beside = off >= 0 ? base + 14 : base - 5
        return svg`<rect class=${kind} x=${x + 4} y=${y} width=${wide - 8} height=${height}></rect>
          <text class=${isWorst ? 'number loud' : 'number'} x=${x + wide / 2} y=${beside}>${signed(off, 1)}</text>`
      })
    })
    const high = head + row * units
    return html`<svg
      class="picture"
      width="${whole / 16}rem"
      height="${high / 16}rem"
      viewBox="0 0 ${whole} ${high}"
      aria-hidden="true"
    >
      ${this.inks.map((_, unit) => svg`<text class="number" x=${names + (unit + 0.5) * wide} y="16">${isNarrow ? unit + 1 : say('orders.unit', { unit: unit + 1 })}</text>`)}
      ${this.inks.map(({ name }, ink) => {
        const base = head + row * (ink + 0.5)
        return svg`<line class="base" x1=${names} x2=${whole} y1=${base} y2=${base}></line>
          <rect class="ink" x="0.5" y=${base - 14} width="10" height="22" fill=${this.colours.get(name) ?? '#808080'}></rect>
          <text x="16" y=${base + 2}>${isNarrow ? letters[ink] : shortened(name)}</text>`
      })}
      ${cells}
    </svg>`
  }

  #table() {
    const mean = this.#mean
    return html`<table>
      <caption>
        ${say('orders.harmCaption', { mean: sayNumber(mean, 1) })}
      </caption>
      <thead>
        <tr>
          <th scope="col">${say('orders.filterInk')}</th>
          ${this.inks.map((_, unit) => html`<th scope="col">${say('orders.unit', { unit: unit + 1 })}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${this.positions.mean.map(
          (ofInk, ink) =>
            html`<tr>
              <th scope="row">${sayName(this.inks[ink].name)}</th>
              ${ofInk.map((score) => html`<td>${signed(score - mean, 1)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>`
  }
}

/** Characters of a name that fit beside the picture. */
const room = 12

function shortened(name: string): string {
  return name.length <= room ? name : `${name.slice(0, room - 1)}…`
}

customElements.define('tack-position-picture', PositionPicture)
