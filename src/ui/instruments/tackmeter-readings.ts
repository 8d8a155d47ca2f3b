/** The readings written down, those under one condition averaged; and one ink on two instruments side by side. */
import { html } from 'lit'
import { average } from '../../physics/repeatability.ts'
import type { Tackmeter } from '../../physics/tackmeter.ts'
import { tackmeters } from '../../physics/tackmeter.ts'
import { readingDeviation } from '../../physics/tackmeter-run.ts'
import type { TackReading } from '../../session/rig-desk.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { RigElement } from './rig-element.ts'
import { rigStyles } from './rig-styles.ts'

/** Readings that belong together: one ink, one instrument, one condition. */
type Group = readonly TackReading[]

/** How near to the standard condition a reading has to be to count as taken there: rpm, degC, s. */
const near = { speed: 15, temperature: 0.5, seconds: 5 } as const

export class TackmeterReadings extends RigElement {
  static override styles = [sharedStyles, tableStyles, rigStyles]

  override render() {
    const { readings } = this.desk.state
    if (readings.length === 0)
      return html`<h2>${say('rig.readings')}</h2>
        <p class="note">${say('rig.noReadings')}</p>`
    const groups = groupsOf(readings)
    return html`
      <h2>${say('rig.readings')}</h2>
      <div class="scroll" tabindex="0" role="region" aria-label=${say('rig.readings')}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say('rig.ink')}</th>
              <th scope="col">${say('rig.instrument')}</th>
              <th scope="col">${say('rig.column.condition')}</th>
              <th scope="col">${say('rig.column.readings')}</th>
              <th scope="col">${say('rig.column.mean')}</th>
            </tr>
          </thead>
          <tbody>
            ${groups.map((group) => this.#row(group))}
          </tbody>
        </table>
      </div>
      <p class="row">
        <button type="button" @click=${() => this.desk.set({ readings: [] })}>${say('rig.clearReadings')}</button>
      </p>
      ${this.#bothScales(groups)}
    `
  }

  #row(group: Group) {
    const [{ ink, instrument, ...condition }] = group
    return html`<tr>
      <th scope="row">${ink}</th>
      <td>${say(`rig.instrument.${instrument}`)}</td>
      <td>${say('rig.condition', { ...condition, speed: Math.round(condition.speed) })}</td>
      <td>${group.map(({ reading }) => sayNumber(reading, 1)).join('; ')}</td>
      <td>${say('rig.meanOf', { ...meanOf(group) })}</td>
    </tr>`
  }

  #bothScales(groups: readonly Group[]) {
    const [laboratory, workshop] = tackmeters.map((instrument) =>
      groups.filter((group) => isStandard(instrument, group)),
    )
    const pairs = laboratory.flatMap((one) => {
      const other = workshop.find(([{ ink, tack }]) => ink === one[0].ink && tack === one[0].tack)
      return other ? [[meanOf(one).mean, meanOf(other).mean, one[0].ink] as const] : []
    })
    return html`<h2>${say('rig.bothScales')}</h2>
      ${
        pairs.length === 0
          ? html`<p class="note">${say('rig.bothScales.none')}</p>`
          : html`<table>
                <thead>
                  <tr>
                    <th scope="col">${say('rig.ink')}</th>
                    <th scope="col">${say('rig.column.laboratory')}</th>
                    <th scope="col">${say('rig.column.workshop')}</th>
                    <th scope="col">${say('rig.column.ratio')}</th>
                  </tr>
                </thead>
                <tbody>
                  ${pairs.map(
                    ([one, other, ink]) =>
                      html`<tr>
                        <th scope="row">${ink}</th>
                        <td>${sayNumber(one, 1)}</td>
                        <td>${sayNumber(other, 1)}</td>
                        <td>${sayNumber(other / one, 1)}</td>
                      </tr>`,
                  )}
                </tbody>
              </table>
              <p>${say('rig.bothScales.about')}</p>`
      }`
  }
}

function groupsOf(readings: readonly TackReading[]): Group[] {
  const groups = new Map<string, TackReading[]>()
  for (const reading of readings) {
    const { instrument, ink, tack, volume, temperature, speed, time } = reading
    const condition = [volume.toFixed(2), temperature.toFixed(1), speed.toFixed(0), time.toFixed(0)]
    const key = [instrument, ink, tack, ...condition].join(' ')
    groups.set(key, [...(groups.get(key) ?? []), reading])
  }
  return [...groups.values()]
}

function meanOf(group: Group) {
  const instrument = tackmeters.find(({ id }) => id === group[0].instrument) ?? tackmeters[0]
  return average(
    group.map(({ reading }) => reading),
    readingDeviation(instrument),
  )
}

function isStandard({ id, standard }: Tackmeter, [{ instrument, volume, temperature, speed, time }]: Group): boolean {
  return (
    id === instrument &&
    volume === standard.volume &&
    Math.abs(temperature - standard.temperature) <= near.temperature &&
    Math.abs(speed - standard.speed) <= near.speed &&
    Math.abs(time - standard.seconds) <= near.seconds
  )
}

customElements.define('tack-tackmeter-readings', TackmeterReadings)
