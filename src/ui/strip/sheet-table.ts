/** Readings typed in: a row for the bare paper and for every patch of the strip, a column for each filter. */
import { css, html } from 'lit'
import type { DensityFilter } from '../../colour/data/density-weights.ts'
import { densityFilters } from '../../colour/density.ts'
import { isRefused } from '../../measure/said.ts'
import { patchName } from '../../measure/sheet-row.ts'
import { readPatch, stripOf, stripPatches } from '../../measure/strip.ts'
import { unitsIn } from '../../press/patches.ts'
import { runPress } from '../../press/run.ts'
import type { SheetReading } from '../../session/desk.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'

export class SheetTable extends StripElement {
  static override properties = { wrong: { attribute: false } }
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      th,
      td {
        padding-block: 2px;
        padding-inline: 0 4px;
        vertical-align: middle;
      }
      tbody th {
        max-width: 11.25rem;
        overflow-wrap: anywhere;
      }
      input {
        width: 4.5rem;
        padding: 0 4px;
        text-align: end;
      }
      input[aria-invalid='true'] {
        border: 2px solid var(--graphite);
      }
    `,
  ]

  /** patches whose rows could not be read */
  declare wrong: readonly (string | undefined)[]

  override render() {
    const names = stripPatches(this.inkNames.length).map((patch) => this.#name(patch))
    return html`
      <h3>${say('strip.typed')}</h3>
      <p class="note">${say('strip.typedNote')}</p>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">${say('strip.patch')}</th>
              ${densityFilters.map((filter) => html`<th scope="col">${say(`strip.filter.${filter}`)}</th>`)}
            </tr>
          </thead>
          <tbody>
            ${names.map(
              (name) =>
                html`<tr>
                  <th scope="row">${name}</th>
                  ${densityFilters.map((filter) => html`<td>${this.#cell(name, filter)}</td>`)}
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <div class="row">
        <button type="button" @click=${this.#fill}>${say('strip.fillComputed')}</button>
        <button type="button" @click=${() => this.desk.set({ readings: [] })}>${say('strip.clear')}</button>
      </div>
      <p class="note">${say('strip.fillNote')}</p>
    `
  }

  #cell(name: string, filter: DensityFilter) {
    return html`<input
      type="text"
      inputmode="decimal"
      autocomplete="off"
      aria-label=${say('strip.cell', { patch: name, filter: say(`strip.filter.${filter}`) })}
      aria-invalid=${this.wrong.some((patch = '') => isSamePatch(patch, name)) ? 'true' : 'false'}
      .value=${this.#reading(name)?.[filter] ?? ''}
      @change=${(event: Event) => this.#type(name, filter, (event.target as HTMLInputElement).value)}
    />`
  }

  #name(patch: number): string {
    return patchName(unitsIn(patch, this.inkNames.length).map((unit) => this.inkNames[unit]))
  }

  #reading(name: string): SheetReading | undefined {
    return this.desk.state.readings.find(({ patch = '' }) => isSamePatch(patch, name))
  }

  /** Rows stay in the order of the table, so that a problem's row is the one seen. */
  #type(name: string, filter: DensityFilter, text: string): void {
    const names = stripPatches(this.inkNames.length).map((patch) => this.#name(patch))
    this.desk.set({
      readings: names.map((patch) => ({
        ...this.#reading(patch),
        patch,
        ...(patch === name ? { [filter]: text.trim() } : {}),
      })),
    })
  }

  /** The settled strip of the present set-up in place of a real one, to try things out: to two places, as an instrument shows. */
  readonly #fill = (): void => {
    const strip = stripOf(runPress({ ...this.session.setUp, reading: 'settled' }))
    const { status } = this.desk.state
    this.desk.set({
      readings: strip.patches.map((patch): SheetReading => {
        const { colour } = readPatch(strip, patch)
        if (isRefused(colour)) return { patch: this.#name(patch) }
        const read = colour.absoluteDensities[status]
        const [red, green, blue] = densityFilters.map((filter) => read[filter].toFixed(2))
        return { patch: this.#name(patch), red, green, blue }
      }),
    })
  }
}

/** A patch stays the same when its inks change places on the press, and its name with them. */
function isSamePatch(first: string, second: string): boolean {
  const inks = (name: string) => name.split(' + ').sort().join(' + ')
  return inks(first) === inks(second)
}

customElements.define('tack-sheet-table', SheetTable)
