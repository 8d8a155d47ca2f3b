/** The ticket of the job: how it should run. */
import type { PropertyDeclarations } from 'lit'
import { LitElement, html } from 'lit'
import type { Drill } from '../../drill/drill.ts'
import { oilViscosity, pickResistance } from '../../physics/pick-test.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { drillStyles } from './drill-styles.ts'

export class DrillTicket extends LitElement {
  static override properties: PropertyDeclarations = { drill: { attribute: false } }
  static override styles = [sharedStyles, tableStyles, drillStyles]

  declare drill: Drill

  override render() {
    const { job, ticket } = this.drill
    const { inks, press, paper } = ticket
    return html`
      <h2>${say('room.ticket')}</h2>
      <p>${say(`drill.job.${job}`)}</p>
      <table aria-label=${say('room.ticket')}>
        <thead>
          <tr>
            <th scope="col">${say('room.ticket.unit')}</th>
            <th scope="col">${say('room.ticket.ink')}</th>
            <th scope="col">${say('room.ticket.tack')}</th>
            <th scope="col">${say('room.ticket.film')}</th>
          </tr>
        </thead>
        <tbody>
          ${inks.map(
            ({ name, tack, film }, unit) =>
              html`<tr>
                <td>${unit + 1}</td>
                <th scope="row">${sayName(name)}</th>
                <td>${sayNumber(tack, 0, 1)}</td>
                <td>${sayNumber(film, 1)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
      <p>
        ${say('room.ticket.press', {
          kind: press.kind === 'web' ? 'web' : 'sheet',
          speed: press.speed,
          interval: press.interval,
          temperature: press.temperature,
          water: press.waterless ? 'none' : sayNumber(press.dampening, 0, 2),
        })}
      </p>
      <p>
        ${say('room.ticket.paper', {
          paper: paper.name,
          strength: paper.surfaceStrength,
          velocity: pickResistance(paper.surfaceStrength) / oilViscosity.medium,
        })}
      </p>
    `
  }
}

customElements.define('tack-drill-ticket', DrillTicket)
