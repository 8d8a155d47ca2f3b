/** What was read, beside what is usual: one row for each patch or ink, one column for each quantity. */
import { html, nothing } from 'lit'
import type { Drill } from '../../drill/drill.ts'
import type { Quantity, QuantityName } from '../../drill/evidence.ts'
import type { Observation } from '../../drill/observe.ts'
import { quantitySaid } from '../../drill/said.ts'
import { unitsIn } from '../../press/patches.ts'
import { say, sayName, sayNumber, sayPercent } from '../say.ts'
import { patchWords } from '../strip/told.ts'
import { saySaid } from './drill-element.ts'

const decimals: Readonly<Record<Exclude<QuantityName, 'missing' | 'torn' | 'place'>, number>> = {
  lightness: 1,
  'red-green': 1,
  'yellow-blue': 1,
  density: 2,
  drift: 2,
  tack: 1,
  temperature: 1,
  film: 2,
  water: 2,
  speed: 2,
  interval: 3,
  'pick velocity': 2,
  absorbency: 2,
}

export function outsideUsual({ value, usual: [least, most] }: Observation): 'high' | 'low' | null {
  return value > most ? 'high' : value < least ? 'low' : null
}

export function readingTable(drill: Drill, observations: readonly Observation[]) {
  const rows = [...new Set(observations.map(({ quantity }) => placeWords(drill, quantity)))]
  const columns = [...new Set(observations.map(({ quantity }) => saySaid(quantitySaid(quantity))))]
  return html`<table>
    <thead>
      <tr>
        <th scope="col">${say('room.what')}</th>
        ${columns.map((column) => html`<th scope="col">${column}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map(
        (row) =>
          html`<tr>
            <th scope="row">${row}</th>
            ${columns.map((column) => {
              const found = observations.find(
                (each) => placeWords(drill, each.quantity) === row && saySaid(quantitySaid(each.quantity)) === column,
              )
              return html`<td>${found ? cell(found) : nothing}</td>`
            })}
          </tr>`,
      )}
    </tbody>
  </table>`
}

function cell(observation: Observation) {
  const { quantity, value, usual } = observation
  const [least, most] = usual.map((each) => written(quantity.name, each))
  const side = outsideUsual(observation)
  return html`${side ? html`<strong>${written(quantity.name, value)} ${side === 'high' ? '▲' : '▼'} ${sideWords(quantity.name, side)}</strong>` : written(quantity.name, value)}
  ${quantity.name === 'place' ? nothing : html`<small>${say('room.usual', { least, most })}</small>`}`
}

/** What it means that a reading is high or low: of a colour, which way it has gone. */
function sideWords(name: QuantityName, side: 'high' | 'low'): string {
  switch (name) {
    case 'lightness':
    case 'red-green':
    case 'yellow-blue':
      return say(`room.${name}.${side}`)
    default:
      return say(`room.${side}`)
  }
}

/** Where a quantity is read: on a patch, at an ink, or for the job as a whole. */
export function placeWords({ ticket }: Drill, { patch, unit }: Pick<Quantity, 'patch' | 'unit'>): string {
  const names = ticket.inks.map(({ name }) => name)
  if (patch !== undefined) return patchWords(unitsIn(patch, names.length), names)
  return unit === undefined ? say('room.job') : sayName(names[unit])
}

/** Read once for the job as a whole, which is no place that a sentence could name. */
export function isOfJob({ patch, unit }: Pick<Quantity, 'patch' | 'unit'>): boolean {
  return patch === undefined && unit === undefined
}

function written(name: QuantityName, value: number): string {
  if (name === 'missing' || name === 'torn') return sayPercent(Math.max(0, value))
  // The reading's small noise only keeps this one a number like the others; units are counted from 1.
  if (name === 'place') return sayNumber(Math.round(value) + 1, 0)
  return sayNumber(value, decimals[name])
}
