/** The run chart of a drill drawn: the densities of the solids over the sheets, through a filter to be chosen. */
import { css, html } from 'lit'
import type { DensityFilter } from '../../colour/data/density-weights.ts'
import { densityFilters } from '../../colour/density.ts'
import type { Drill } from '../../drill/drill.ts'
import type { SheetDensities } from '../../drill/run-densities.ts'
import { runDensities } from '../../drill/run-densities.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { dressWanted } from '../dress.ts'
import '../run/run-chart.ts'
import type { RunLine } from '../run/run-lines.ts'
import { say, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'

/** Working out a run takes a moment, and nothing of it changes. */
const known = new WeakMap<Drill, SheetDensities[]>()

/** Density that is told apart on the chart: chosen, as a healthy run is commonly held to 0.1 either way. */
const leastSpan = 0.2

export class DrillRun extends SessionElement {
  static override properties = { drill: { attribute: false }, _filter: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 4px;
        margin: 8px 0;
      }
    `,
  ]

  declare drill: Drill
  declare _filter: DensityFilter

  constructor() {
    super()
    this._filter = 'red'
  }

  override render() {
    const filter = this._filter
    const rows = this.#rows()
    const lines = this.drill.ticket.inks.map(({ name: label }, ink): RunLine<SheetDensities> => ({
      label,
      value: ({ solids }) => solids[ink][filter],
    }))
    const [first, last] = [rows[0], rows[rows.length - 1]].map(({ sheet }) => sayNumber(sheet, 0))
    const title = say('room.chart', { filter })
    return html`<tack-choice
        drawLegend
        .legend=${say('room.chart.filter')}
        .options=${densityFilters.map((value) => ({ value, label: say(`strip.filter.${value}`) }))}
        .value=${filter}
        @choose=${({ value }: ChooseEvent) => (this._filter = value as DensityFilter)}
      ></tack-choice>
      <tack-run-chart
        .rows=${rows}
        .lines=${lines}
        .events=${[]}
        .marker=${null}
        .axis=${say('room.chart.axis')}
        .leastSpan=${leastSpan}
        .summary=${say('run.picture', { what: title, first, last })}
        early
        .dress=${`${dressWanted()} ${filter}`}
      ></tack-run-chart>`
  }

  #rows(): SheetDensities[] {
    let rows = known.get(this.drill)
    if (!rows) known.set(this.drill, (rows = runDensities(this.drill)))
    return rows
  }
}

customElements.define('tack-drill-run', DrillRun)
