/** What a step gained and what it cost, each with its numbers before and after. */
import { html } from 'lit'
import type { Effect } from '../../press/effects.ts'
import { effectKinds } from '../../press/effects.ts'
import { say, sayNumber, sayPercent } from '../say.ts'

export function effectTables(gains: readonly Effect[], costs: readonly Effect[]) {
  return html`${effectTable('gains', gains)} ${effectTable('costs', costs)}`
}

const empty = { gains: 'room.noGains', costs: 'room.noCosts' } as const

function effectTable(side: 'gains' | 'costs', effects: readonly Effect[]) {
  if (effects.length === 0)
    return html`<h3>${say(`room.${side}`)}</h3>
      <p>${say(empty[side])}</p>`
  return html`<table>
    <caption>
      ${say(`room.${side}`)}
    </caption>
    <thead>
      <tr>
        <th scope="col">${say('room.effect')}</th>
        <th scope="col">${say('room.before')}</th>
        <th scope="col">${say('room.after')}</th>
      </tr>
    </thead>
    <tbody>
      ${effects.map(
        ({ name, before, after }) =>
          html`<tr>
            <th scope="row">${say(`effect.${name}`)}</th>
            <td>${amount(name, before)}</td>
            <td>${amount(name, after)}</td>
          </tr>`,
      )}
    </tbody>
  </table>`
}

function amount(name: Effect['name'], value: number): string {
  const { unit } = effectKinds[name]
  if (unit === 'share') return sayPercent(value)
  return unit === 'um'
    ? say('room.um', { value: sayNumber(value, 2) })
    : say('room.speed', { value: sayNumber(value, 2) })
}
