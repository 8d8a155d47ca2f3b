/** A small plot of numbers: lines and dots over two scales with round ticks. The numbers stand in words or tables beside it. */
import { LitElement, css, html, svg } from 'lit'
import { sayNumber } from '../say.ts'

export type Point = readonly [x: number, y: number]

/** px of the drawing, which then scales with the page */
const width = 420
const height = 200
const left = 44
const right = width - 20
const top = 8
const bottom = height - 36

export class LinePlot extends LitElement {
  static override properties = {
    line: { attribute: false },
    dots: { attribute: false },
    from: { attribute: false },
    to: { attribute: false },
    across: {},
    upright: {},
    summary: {},
  }
  static override styles = css`
    svg {
      display: block;
      /* As all pictures, from left to right in every language. */
      direction: ltr;
      width: 100%;
      height: auto;
      max-width: 32.5rem;
    }
    text {
      fill: var(--soft);
      font-size: 12px;
    }
    .grid {
      stroke: var(--line);
    }
    .axis {
      stroke: var(--edge);
    }
    polyline {
      fill: none;
      stroke: var(--graphite);
      stroke-width: 2;
    }
    circle {
      fill: var(--field);
      stroke: var(--graphite);
      stroke-width: 2;
    }
  `

  declare line: readonly Point[]
  declare dots: readonly Point[]
  /** least and most that must be in sight: x, y */
  declare from: Point
  declare to: Point
  declare across: string
  declare upright: string
  declare summary: string

  constructor() {
    super()
    this.line = []
    this.dots = []
    this.from = [0, 0]
    this.to = [1, 1]
  }

  override render() {
    const points = [...this.line, ...this.dots]
    const reach = (axis: 0 | 1): [number, number] => [
      Math.min(this.from[axis], ...points.map((point) => point[axis])),
      Math.max(this.to[axis], ...points.map((point) => point[axis])),
    ]
    const xTicks = roundTicks(...reach(0))
    const yTicks = roundTicks(...reach(1))
    const x = (value: number) => scale(value, xTicks, left, right)
    const y = (value: number) => scale(value, yTicks, bottom, top)
    return html`<svg viewBox="0 0 ${width} ${height}" role="img" aria-label=${this.summary}>
      ${yTicks.map(
        (tick) =>
          svg`<line class="grid" x1=${left} x2=${right} y1=${y(tick)} y2=${y(tick)}></line>
            <text x=${left - 4} y=${y(tick) + 4} text-anchor="end">${sayNumber(tick, 0, 2)}</text>`,
      )}
      ${xTicks.map(
        (tick) =>
          svg`<line class="axis" x1=${x(tick)} x2=${x(tick)} y1=${bottom} y2=${bottom + 4}></line>
            <text x=${x(tick)} y=${bottom + 17} text-anchor="middle">${sayNumber(tick, 0, 2)}</text>`,
      )}
      <line class="axis" x1=${left} x2=${right} y1=${bottom} y2=${bottom}></line>
      <text x=${(left + right) / 2} y=${height - 4} text-anchor="middle">${this.across}</text>
      <text transform="translate(12 ${(top + bottom) / 2}) rotate(-90)" text-anchor="middle">${this.upright}</text>
      <polyline points=${this.line.map((point) => `${x(point[0])},${y(point[1])}`).join(' ')}></polyline>
      ${this.dots.map((point) => svg`<circle cx=${x(point[0])} cy=${y(point[1])} r="4"></circle>`)}
    </svg>`
  }
}

function scale(value: number, ticks: readonly number[], start: number, end: number): number {
  const [least, most] = [ticks[0], ticks[ticks.length - 1]]
  return start + ((value - least) / (most - least)) * (end - start)
}

/** Steps of 1, 2 or 5 times a power of ten, so that four to ten of them hold everything from least to most. */
export function roundTicks(least: number, most: number): number[] {
  const span = Math.max(most - least, 1e-6)
  const power = 10 ** Math.floor(Math.log10(span / 4))
  const step = [1, 2, 5, 10].map((part) => part * power).find((part) => span / part <= 7) ?? 10 * power
  const first = Math.floor(least / step + 1e-9)
  const last = Math.max(first + 1, Math.ceil(most / step - 1e-9))
  return Array.from({ length: last - first + 1 }, (_, tick) => Number(((first + tick) * step).toPrecision(12)))
}

customElements.define('tack-line-plot', LinePlot)
