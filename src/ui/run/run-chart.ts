/**
 * Lines over the sheets of a run. Each line has a dash of its own and its name at its end; events are upright lines, the
 * sheet looked at a heavy one that can be dragged. Fires `mark` with the sheet. Its numbers stand in the table.
 */
import type { PropertyValues } from 'lit'
import { LitElement, css, html, nothing } from 'lit'
import type UPlot from 'uplot'
import { say, sayNumber } from '../say.ts'
import { textScale } from '../text-scale.ts'
import type { Drawing } from '../../view/svg-file.ts'
import { chartForPaper } from './chart-for-paper.ts'
import { dashes, finite, room, tenfolds } from './chart-scale.ts'
import type { RunLine } from './run-lines.ts'
import { drawMarks } from './run-marks.ts'

export class MarkEvent extends Event {
  readonly sheet: number

  constructor(sheet: number) {
    super('mark')
    this.sheet = sheet
  }
}

/** px where text has its usual size */
const height = 220
const letters = 13
const labelRoom = 110
const narrow = 520

export class RunChart extends LitElement {
  static override properties = {
    rows: { attribute: false },
    lines: { attribute: false },
    events: { attribute: false },
    marker: { type: Number },
    axis: {},
    summary: {},
    leastSpan: { type: Number },
    early: { type: Boolean },
    dress: {},
    _failed: { state: true },
  }
  // Of uPlot's own style sheet, what a chart without cursor and legend needs.
  static override styles = css`
    :host {
      display: block;
      position: relative;
      min-height: ${height / 16}rem;
    }
    .uplot {
      /* A run goes from left to right in every language, as its sheets do. */
      direction: ltr;
      width: min-content;
    }
    .u-wrap {
      position: relative;
      user-select: none;
      touch-action: pan-y;
      cursor: ew-resize;
    }
    .u-over,
    .u-under,
    .u-axis {
      position: absolute;
    }
    .u-under {
      overflow: hidden;
    }
    .u-select,
    .u-off {
      display: none;
    }
    canvas {
      display: block;
      position: relative;
      width: 100%;
      height: 100%;
    }
  `

  /** what was read of each sheet; the lines know what it is */
  declare rows: readonly { readonly sheet: number }[]
  declare lines: readonly RunLine<never>[]
  /** sheets before which something happens */
  declare events: readonly number[]
  /** null where no sheet is looked at */
  declare marker: number | null
  /** title of the upright axis, with its unit */
  declare axis: string
  declare summary: string
  /** least difference, in the axis's unit, that fills the chart */
  declare leastSpan: number
  /** the first sheets drawn out */
  declare early: boolean
  /** the page's colours (dress.ts) */
  declare dress: string
  declare _failed: string | null

  #chart: UPlot | undefined
  #kind: typeof UPlot | undefined
  #loading = false
  #drawnFor: readonly unknown[] = []
  #observer: ResizeObserver | undefined

  constructor() {
    super()
    this._failed = null
    this.leastSpan = 0.5
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#observer = new ResizeObserver(() => this.#draw())
    this.#observer.observe(this)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#observer?.disconnect()
    this.#chart?.destroy()
    this.#chart = undefined
    this.#drawnFor = []
  }

  override render() {
    return html`<div
        class="host"
        role="img"
        aria-label=${this.summary}
        @pointerdown=${this.#down}
        @pointermove=${this.#move}
      ></div>
      ${this._failed === null ? nothing : html`<p>${say('bench.noPicture', { reason: this._failed })}</p>`}`
  }

  override updated(changed: PropertyValues): void {
    if (changed.has('marker') && changed.size === 1) this.#chart?.redraw(false)
    else void this.#load()
  }

  async #load(): Promise<void> {
    if (this.#loading) return
    this.#loading = true
    try {
      this.#kind ??= (await import('uplot')).default
      this.#draw()
    } catch (error) {
      this._failed = error instanceof Error ? error.message : String(error)
    } finally {
      this.#loading = false
    }
  }

  #draw(): void {
    const width = this.clientWidth
    if (!this.#kind || width === 0 || !this.isConnected) return
    const { rows, lines, events, axis, early, dress } = this
    const names = lines.map(({ label }) => label).join('\n')
    const wanted = [rows, names, events.join(), axis, early, dress, width]
    if (wanted.every((each, at) => each === this.#drawnFor[at]) && this.#chart) {
      this.#chart.redraw(false)
      return
    }
    this.#drawnFor = wanted
    this.#chart?.destroy()
    const host = this.renderRoot.querySelector('.host') as HTMLElement
    const data: UPlot.AlignedData = [
      rows.map(({ sheet }) => this.#across(sheet)),
      ...lines.map(({ value }) => rows.map((row) => finite(value(row as never)))),
    ]
    this.#chart = new this.#kind(this.#options(width), data, host)
  }

  #options(width: number): UPlot.Options {
    const style = getComputedStyle(this)
    const [graphite, soft, line] = ['graphite', 'soft', 'line'].map((name) =>
      style.getPropertyValue(`--${name}`).trim(),
    )
    const scale = textScale()
    const font = `${letters * scale}px ${style.fontFamily}`
    const look = { stroke: soft, font, labelFont: font, labelSize: 20 * scale, grid: { stroke: line, width: 1 } }
    const ticks = { stroke: line, width: 1 }
    return {
      width,
      height: height * scale,
      padding: [10, scale * (width < narrow * scale ? 72 : labelRoom), 0, 0],
      legend: { show: false },
      cursor: { show: false },
      scales: {
        x: {
          time: false,
          range: (_, least, most) => [least, Math.max(most, least + 1)],
        },
        y: { range: (_, least, most) => room(least, most, this.leastSpan) },
      },
      axes: [
        {
          ...look,
          ticks,
          label: say('run.sheetAxis'),
          size: 30 * scale,
          ...(this.early
            ? { splits: (_: UPlot, __: number, ___: number, most: number) => tenfolds.filter((each) => each <= most) }
            : {}),
          values: (_, splits) =>
            splits.map((split) => (Number.isInteger(split) ? sayNumber(this.#sheetAt(split), 0) : '')),
        },
        {
          ...look,
          ticks,
          label: this.axis,
          size: 48 * scale,
          values: (_, splits) => splits.map((split) => sayNumber(split, 0, 2)),
        },
      ],
      series: [
        {},
        ...this.lines.map(({ label }, index) => ({
          label,
          stroke: graphite,
          width: 2,
          dash: dashes[index % dashes.length],
          points: { show: false },
        })),
      ],
      hooks: {
        draw: [
          (chart) =>
            drawMarks(chart, {
              events: this.events.map((sheet) => this.#across(sheet)),
              marker: this.marker === null ? null : this.#across(this.marker),
              ends: this.#ends(),
              graphite,
              soft,
              letters: letters * scale,
              font: style.fontFamily,
            }),
        ],
      },
    }
  }

  /** Where a sheet stands along the bottom: evenly, or each tenfold as wide as the last. */
  #across(sheet: number): number {
    return this.early ? Math.log10(sheet) : sheet
  }

  #sheetAt(across: number): number {
    return this.early ? 10 ** across : across
  }

  /** Each line's name and where it ends. */
  #ends(): { label: string; value: number }[] {
    const last = this.rows[this.rows.length - 1]
    return this.lines
      .map(({ label, short = label, value }) => ({ label: short, value: value(last as never) }))
      .filter(({ value }) => Number.isFinite(value))
  }

  /** The same lines once more, for a file and for paper. */
  printed(): Drawing {
    const { rows, lines, events, marker, axis, early, leastSpan } = this
    return chartForPaper({ rows, lines, events, marker, axis, early, leastSpan })
  }

  #down(event: PointerEvent): void {
    if (event.button !== 0 || this.marker === null) return
    ;(event.currentTarget as HTMLElement).setPointerCapture(event.pointerId)
    this.#mark(event)
  }

  #move(event: PointerEvent): void {
    if ((event.currentTarget as HTMLElement).hasPointerCapture(event.pointerId)) this.#mark(event)
  }

  #mark({ clientX }: PointerEvent): void {
    const chart = this.#chart
    if (!chart) return
    const { left, width } = chart.over.getBoundingClientRect()
    const sheet = this.#sheetAt(chart.posToVal(Math.min(width, Math.max(0, clientX - left)), 'x'))
    if (Number.isFinite(sheet)) this.dispatchEvent(new MarkEvent(Math.max(1, Math.round(sheet))))
  }
}

customElements.define('tack-run-chart', RunChart)
