/** The run chart: a whole run with what happens on the way, drawn and in numbers, and any of its sheets on the bench. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import { usualAim } from '../../measure/order-colours.ts'
import { ranges } from '../../press/ranges.ts'
import type { PrintedRun } from '../../session/run-desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { linkedText } from '../linked-text.ts'
import '../number-field.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import { dressWanted } from '../dress.ts'
import '../instruments/line-plot.ts'
import { problemLine } from '../problem-words.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { MarkEvent } from './run-chart.ts'
import './run-chart.ts'
import { RunElement } from './run-element.ts'
import './run-events.ts'
import type { PatchGroup, RunLine } from './run-lines.ts'
import { colourLines, contaminationLines, nearestRow, patchGroups, trapLines } from './run-lines.ts'
import './run-table.ts'

const scales = ['early', 'even'] as const

/** %: chosen so that the share of foreign ink of a usual set, 2 to 6 %, would stand within the empty chart. */
const mostForeign = 10

export class RunView extends RunElement {
  static override properties = {
    _later: { state: true },
    _group: { state: true },
    _scale: { state: true },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    css`
      .setting {
        display: grid;
        gap: 16px 32px;
      }
      @media (min-width: 68.75em) {
        .setting {
          grid-template-columns: minmax(0, 1fr) minmax(0, 1fr);
        }
      }
      .charts {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 35rem), 1fr));
        gap: 8px 24px;
      }
      figure {
        min-width: 0;
        margin: 8px 0 0;
      }
      .title {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        align-items: center;
        min-height: 2rem;
      }
      .title label > select {
        display: inline-block;
      }
      figcaption {
        font-size: 0.875rem;
      }
      .marker input[type='range'] {
        flex: 1 1 15rem;
        min-width: 0;
      }
      .marker tack-number-field {
        width: 7.5rem;
      }
      .sheets {
        width: 10rem;
      }
    `,
  ]

  /** the later ink's unit; the last one where it is too high */
  declare _later: number
  declare _group: PatchGroup
  declare _scale: (typeof scales)[number]

  constructor() {
    super()
    this._later = Infinity
    this._group = 'all'
    this._scale = 'early'
  }

  override render() {
    const { session, desk } = this
    const { printed } = desk.state
    return html`<main>
      <div class="panel">
        <div class="setting">
          <div>
            <h2>${say('run.title')}</h2>
            <p>${linkedText(say('run.intro'))}</p>
            <div class="row">${this.#control()}</div>
            <div role="status">${this.#standing()}</div>
          </div>
          <tack-run-events .session=${session}></tack-run-events>
        </div>
      </div>
      ${
        printed
          ? html`<div class="panel">${this.#marker(printed)}</div>
              <div class="panel">
                <tack-choice
                  drawLegend
                  .legend=${say('run.scale')}
                  .options=${scales.map((value) => ({ value, label: say(`run.scale.${value}`) }))}
                  .value=${this._scale}
                  @choose=${({ value }: ChooseEvent) => (this._scale = value as RunView['_scale'])}
                ></tack-choice>
                <div class="charts">${this.#charts(printed)}</div>
              </div>
              <tack-run-table class="panel" .session=${session} .printed=${printed}></tack-run-table>`
          : this.#before(desk.state.sheets)
      }
    </main>`
  }

  /** What a run will be drawn on, before there is one. */
  #before(sheets: number) {
    return html`<div class="panel">
      <h3>${say('run.before')}</h3>
      <p>${say('run.beforeHow')}</p>
      <tack-line-plot
        .to=${[sheets, mostForeign]}
        .across=${say('run.sheetAxis')}
        .upright=${say('run.contaminationAxis')}
        .summary=${say('run.beforePicture', { sheets })}
      ></tack-line-plot>
    </div>`
  }

  /** whether the button that starts the run, or the one that calls it off, had the focus before it gave way to the other */
  #hadFocus = false

  override willUpdate(changed: PropertyValues): void {
    super.willUpdate(changed)
    this.#hadFocus = this.shadowRoot?.activeElement?.matches('.go') ?? false
  }

  override updated(changed: PropertyValues): void {
    super.updated(changed)
    if (this.#hadFocus && !this.shadowRoot?.activeElement) this.renderRoot.querySelector<HTMLElement>('.go')?.focus()
  }

  #control() {
    const { share, sheets } = this.desk.state
    if (share !== null) {
      const text = say('run.running', { percent: sayNumber(100 * share, 0) })
      return html`<progress .value=${share} aria-label=${text}></progress> <span>${text}</span>
        <button type="button" class="go" @click=${() => this.desk.cancel()}>${say('run.cancel')}</button>`
    }
    return html`<tack-number-field
        class="sheets"
        .label=${say('run.sheets')}
        .unit=${say('run.sheetsUnit')}
        .least=${ranges.sheet.least}
        .most=${ranges.sheet.most}
        .step=${1000}
        .decimals=${0}
        .value=${sheets}
        .offer=${(length: number) => {
          this.desk.ask({ sheets: Math.round(length) })
          return null
        }}
      ></tack-number-field>
      <button type="button" class="go" @click=${() => this.desk.start(this.session.setUp)}>${say('run.start')}</button>`
  }

  #standing() {
    const { printed, problem, share } = this.desk.state
    if (problem !== null) return html`<p class="mark">${problemLine(problem)}</p>`
    if (share !== null) return nothing
    if (!printed) return html`<p class="note">${say('run.none')}</p>`
    const { sheets, rows } = printed
    return html`<p>${say('run.done', { sheets, rows: rows.length })}</p>
      ${this.#isStale(printed) ? html`<p class="mark">${say('run.stale')}</p>` : nothing}`
  }

  #isStale({ setUp, asked, sheets }: PrintedRun): boolean {
    const { state } = this.desk
    const samePress =
      JSON.stringify({ ...setUp, reading: null }) === JSON.stringify({ ...this.session.setUp, reading: null })
    return !samePress || asked !== state.asked || sheets !== state.sheets
  }

  #marker(printed: PrintedRun) {
    const { marker } = this.desk.state
    const { rows, sheets, asked } = printed
    const at = rows.findIndex(({ sheet }) => sheet >= marker)
    const before = asked.filter(({ sheet }) => sheet <= marker).length
    const samePress = !this.#isStale(printed)
    return html`
      <div class="row marker">
        <tack-number-field
          .label=${say('run.marker')}
          .least=${1}
          .most=${sheets}
          .decimals=${0}
          .value=${marker}
          .offer=${(sheet: number) => {
            this.desk.ask({ marker: Math.round(sheet) })
            return null
          }}
        ></tack-number-field>
        <input
          type="range"
          min="0"
          max=${rows.length - 1}
          .value=${String(at)}
          aria-label=${say('run.marker')}
          aria-valuetext=${say('run.markerValue', { sheet: marker })}
          aria-describedby="hint"
          @input=${(event: Event) =>
            this.desk.ask({ marker: rows[Number((event.target as HTMLInputElement).value)].sheet })}
        />
        <button type="button" @click=${() => this.#see(marker)}>${say('run.see', { sheet: marker })}</button>
      </div>
      <p class="note" id="hint">${say('run.markerHint')}</p>
      ${
        before > 0
          ? html`<p class="mark">
              ${say('run.seenWithout', { sheet: marker, events: say('run.eventsBefore', { count: before }) })}
            </p>`
          : nothing
      }
      ${samePress ? nothing : html`<p class="mark">${say('run.seenStale', { sheet: marker })}</p>`}
    `
  }

  #charts(printed: PrintedRun) {
    const { inks, paper } = printed.setUp
    const later = Math.min(this._later, inks.length - 1)
    const colours = colourLines(printed, this._group)
    return html`
      ${this.#chart(printed, say('run.contamination'), 'run.contaminationAxis', contaminationLines(printed), nothing)}
      ${this.#chart(
        printed,
        say('run.traps', { later: inks[later].name }),
        'run.trapsAxis',
        trapLines(printed, later),
        html`<label
          >${say('run.laterInk')}
          <select @change=${(event: Event) => (this._later = Number((event.target as HTMLSelectElement).value))}>
            ${inks.map(({ name }, unit) =>
              unit === 0 ? nothing : html`<option value=${unit} ?selected=${unit === later}>${sayName(name)}</option>`,
            )}
          </select></label
        >`,
      )}
      ${
        colours.length === 0
          ? html`<p class="note">${say('run.noColour')}</p>`
          : this.#chart(
              printed,
              say('run.colour', { aim: usualAim[paper.base] }),
              'run.colourAxis',
              colours,
              html`<label
                >${say('run.patch')}
                <select
                  @change=${(event: Event) => (this._group = (event.target as HTMLSelectElement).value as PatchGroup)}
                >
                  ${patchGroups.map(
                    (group) =>
                      html`<option value=${group} ?selected=${group === this._group}>
                        ${say(`run.patch.${group}`)}
                      </option>`,
                  )}
                </select></label
              >`,
            )
      }
    `
  }

  #chart(
    { rows, asked }: PrintedRun,
    title: string,
    axis: 'run.contaminationAxis' | 'run.trapsAxis' | 'run.colourAxis',
    lines: readonly RunLine[],
    choice: unknown,
  ) {
    const { marker } = this.desk.state
    const near = nearestRow(rows, marker)
    const unit = axis === 'run.colourAxis' ? 'plain' : 'percent'
    const values = lines
      .map(({ label, value }) => ({ label, value: value(near) }))
      .filter(({ value }) => Number.isFinite(value))
      .map(({ label, value }) => say(`run.value.${unit}`, { label, value: sayNumber(value, 2) }))
    const last = rows[rows.length - 1].sheet
    return html`<figure>
      <div class="title">
        <h3>${title}</h3>
        ${choice}
      </div>
      <tack-run-chart
        .rows=${rows}
        .lines=${lines}
        .events=${asked.map(({ sheet }) => sheet)}
        .marker=${marker}
        .axis=${say(axis)}
        .summary=${say('run.picture', { what: title, first: sayNumber(1, 0), last: sayNumber(last, 0) })}
        .early=${this._scale === 'early'}
        .dress=${dressWanted()}
        @mark=${({ sheet }: MarkEvent) => this.desk.ask({ marker: Math.min(sheet, last) })}
      ></tack-run-chart>
      <figcaption>${say('run.at', { sheet: near.sheet, values: values.join(', ') })}</figcaption>
    </figure>`
  }

  #see(sheet: number): void {
    this.attempt({ kind: 'read', reading: { sheet } })
    this.session.lookWith({ view: 'bench' })
  }
}

customElements.define('tack-run-view', RunView)
