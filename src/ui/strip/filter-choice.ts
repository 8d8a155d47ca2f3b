/** The choice of a densitometer's filter: the one that suits the patch, or always the same. */
import { html } from 'lit'
import type { DensityFilter } from '../../colour/data/density-weights.ts'
import { densityFilters } from '../../colour/density.ts'
import type { Desk } from '../../session/desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { say } from '../say.ts'

export function filterChoice(desk: Desk) {
  return html`<tack-choice
    drawLegend
    .legend=${say('strip.filter')}
    .options=${['right', ...densityFilters].map((value) => ({
      value,
      label: say(`strip.filter.${value as DensityFilter | 'right'}`),
    }))}
    .value=${desk.state.filter ?? 'right'}
    @choose=${({ value }: ChooseEvent) => desk.set({ filter: value === 'right' ? null : (value as DensityFilter) })}
  ></tack-choice>`
}
