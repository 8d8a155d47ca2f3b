/**
 * The densitometer: what it reads of the patch under its head, by status and filter, with or without the paper. `brief`,
 * as beside a lesson, it is laid on the patch looked at, and what it reads is all it tells.
 */
import { css, html, nothing } from 'lit'
import type { DensityStatus } from '../../colour/data/density-weights.ts'
import { densityFilters } from '../../colour/density.ts'
import { trapAt } from '../../measure/patch-trap.ts'
import { isRefused } from '../../measure/said.ts'
import type { ColourReading, StripPatch } from '../../measure/strip.ts'
import { readPatch } from '../../measure/strip.ts'
import type { DeskState } from '../../session/desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { filterChoice } from './filter-choice.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { patchWords, told } from './told.ts'

const statuses = ['E', 'T'] as const satisfies readonly DensityStatus[]
const bases = ['minus paper', 'absolute'] as const satisfies readonly DeskState['base'][]

export class Densitometer extends StripElement {
  static override properties = { ...StripElement.properties, brief: { type: Boolean } }
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      dl {
        display: flex;
        gap: 4px 24px;
        margin-top: 12px;
      }
      dt {
        font-size: 0.875rem;
      }
      .through {
        text-decoration: underline;
        text-decoration-thickness: 3px;
        text-underline-offset: 4px;
      }
    `,
  ]

  declare brief: boolean

  constructor() {
    super()
    this.brief = false
  }

  protected override get patch(): number {
    const { patch } = this.session
    return this.brief && this.strip.patches.includes(patch) ? patch : super.patch
  }

  override render() {
    const { strip, patch, inkNames } = this
    const { status, base } = this.desk.state
    const { units, colour } = readPatch(strip, patch)
    return html`
      <h2>${linkedText(say('strip.meter'))}</h2>
      <p>${patchWords(units, inkNames)}</p>
      ${isRefused(colour) ? html`<p class="mark">${linkedText(told(colour.refused))}</p>` : this.#densities(colour)}
      <div class="row">
        ${this.knows('density-status') ? this.#statuses(status) : nothing}
        <tack-choice
          drawLegend
          .legend=${say('strip.base')}
          .options=${bases.map((value) => ({ value, label: say(`strip.base.${value}`) }))}
          .value=${base}
          @choose=${({ value }: ChooseEvent) => this.desk.set({ base: value as DeskState['base'] })}
        ></tack-choice>
        ${this.brief ? nothing : filterChoice(this.desk)}
      </div>
      <p class="note">
        ${this.knows('density-status') ? linkedText(say(`strip.statusNote.${status}`)) : nothing}
        ${base === 'absolute' ? linkedText(say('strip.absoluteNote')) : nothing}
      </p>
      ${this.brief ? nothing : this.#films(readPatch(strip, patch))}
    `
  }

  #statuses(status: DensityStatus) {
    return html`<tack-choice
      drawLegend
      .legend=${say('strip.status')}
      .options=${statuses.map((value) => ({ value, label: value, name: say(`strip.status.${value}`) }))}
      .value=${status}
      @choose=${({ value }: ChooseEvent) => this.desk.set({ status: value as DensityStatus })}
    ></tack-choice>`
  }

  #films({ films, leftOut }: StripPatch) {
    const { inkNames } = this
    return html`<h3>${say('strip.filmsHere')}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">${say('bench.ink')}</th>
            <th scope="col">${say('strip.filmUm')}</th>
          </tr>
        </thead>
        <tbody>
          ${inkNames.map(
            (name, unit) =>
              html`<tr>
                <th scope="row">${sayName(name)}</th>
                <td>${sayNumber(films[unit], 2)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
      ${leftOut.map(
        ({ unit, film }) =>
          html`<p class="note">${say('strip.leftOut', { ink: inkNames[unit], film: sayNumber(film, 2) })}</p>`,
      )}`
  }

  #densities(colour: ColourReading) {
    const { status, base } = this.desk.state
    const trap = this.brief ? null : trapAt(this.strip, this.patch, status, this.desk.state.filter ?? undefined)
    const read = base === 'absolute' ? colour.absoluteDensities[status] : colour.densitiesMinusPaper[status]
    return html`<dl>
      ${densityFilters.map(
        (each) =>
          html`<div>
            <dt class=${each === trap?.filter ? 'through' : ''}>${say(`strip.filter.${each}`)}</dt>
            <dd class="figure">${sayNumber(read[each], 2)}</dd>
          </div>`,
      )}
    </dl>`
  }
}

customElements.define('tack-densitometer', Densitometer)
