/** Two trials compared: what was changed between them, and what came of it. */
import { html } from 'lit'
import type { Difference } from '../../press/difference.ts'
import { differenceOf } from '../../press/difference.ts'
import type { Trial } from '../../session/saved.ts'
import { inPercent, signed } from '../orders/order-words.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import type { MessageKey } from '../say.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { en } from '../../words/en.ts'
import { TrialsElement, readTrial, trialReadings } from './trials-element.ts'

export class CompareTrials extends TrialsElement {
  static override properties = { _from: { state: true }, _to: { state: true } }
  static override styles = [sharedStyles, ordersStyles, tableStyles]

  /** indices of the rows; null for the last two */
  declare _from: number | null
  declare _to: number | null

  constructor() {
    super()
    this._from = null
    this._to = null
  }

  override render() {
    const { list } = this.trials
    const from = Math.min(this._from ?? list.length - 2, list.length - 1)
    const to = Math.min(this._to ?? list.length - 1, list.length - 1)
    return html`
      <h3>${say('trials.compare')}</h3>
      <div class="row">
        ${this.#choice('trials.from', from, (index) => (this._from = index))}
        ${this.#choice('trials.to', to, (index) => (this._to = index))}
      </div>
      ${this.#changes(list[from], list[to])} ${this.#effects(list[from], list[to])}
    `
  }

  #choice(label: 'trials.from' | 'trials.to', chosen: number, choose: (index: number) => void) {
    return html`<label
      >${say(label)}
      <select @change=${(event: Event) => choose(Number((event.target as HTMLSelectElement).value))}>
        ${this.trials.list.map(
          ({ name }, index) =>
            html`<option value=${index} ?selected=${index === chosen}>${index + 1} · ${name}</option>`,
        )}
      </select></label
    >`
  }

  #changes(from: Trial, to: Trial) {
    const changes = differenceOf(from.setUp, to.setUp)
    if (changes.length === 0) return html`<p class="mark">${say('trials.nothingChanged')}</p>`
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('trials.changed')}>
      <table>
        <caption>
          ${say('trials.changed')}
        </caption>
        ${head(from, to)}
        <tbody>
          ${changes.map(
            (change) =>
              html`<tr>
                <th scope="row">${pathWords(change)}</th>
                <td>${valueWords(change.before)}</td>
                <td>${valueWords(change.after)}</td>
                <td>
                  ${
                    typeof change.before === 'number' && typeof change.after === 'number'
                      ? signed(change.after - change.before, 2)
                      : ''
                  }
                </td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`
  }

  #effects(from: Trial, to: Trial) {
    const [before, after] = [from, to].map((trial) => {
      const results = this.trials.results(trial)
      return results ? readTrial(results) : null
    })
    if (!before || !after) return html`<p class="mark">${say('trials.farSheet')}</p>`
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('trials.effect')}>
      <table>
        <caption>
          ${say('trials.effect')}
        </caption>
        ${head(from, to)}
        <tbody>
          ${trialReadings.map(
            (name) =>
              html`<tr>
                <th scope="row">${say(`trials.${name}`)}</th>
                <td>${inPercent(before[name])}</td>
                <td>${inPercent(after[name])}</td>
                <td>${say('trials.points', { by: signed(100 * (after[name] - before[name]), 2) })}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>`
  }
}

function head(from: Trial, to: Trial) {
  return html`<thead>
    <tr>
      <th scope="col">${say('trials.what')}</th>
      <th scope="col">${say('trials.before', { name: from.name })}</th>
      <th scope="col">${say('trials.before', { name: to.name })}</th>
      <th scope="col">${say('trials.difference')}</th>
    </tr>
  </thead>`
}

/** inks.yellow.tack, press.speed, order ... in words; names of inks may hold points. */
function pathWords({ path, before, after }: Difference): string {
  if (path === 'order') return say('trials.path.order')
  const [top, ...rest] = path.split('.')
  if (top !== 'inks') return fieldWords(rest.at(-1) ?? top)
  if (typeof before === 'object' || typeof after === 'object') {
    const whole = before === undefined || after === undefined
    if (whole) return say('trials.path.ink', { ink: rest.join('.') })
  }
  return say('trials.path.inkField', { ink: rest.slice(0, -1).join('.'), field: fieldWords(rest.at(-1) ?? '') })
}

/** A field that the catalogue does not know is told by its own name. */
function fieldWords(field: string): string {
  const key = `trials.field.${field}`
  return Object.hasOwn(en, key) ? say(key as MessageKey) : field
}

function valueWords(value: unknown): string {
  switch (typeof value) {
    case 'undefined':
      return say('trials.missing')
    case 'number':
      return sayNumber(value, 0, 3)
    case 'boolean':
      return say(value ? 'trials.yes' : 'trials.no')
    case 'string':
      return value === 'first' || value === 'settled' ? say(`trials.sheet.${value}`) : sayName(value)
    default:
      return structureWords(value)
  }
}

/** An order of names, a colour, a sheet's number, or a whole ink that only one of two set-ups has. */
function structureWords(value: unknown): string {
  if (Array.isArray(value)) return value.map((each) => valueWords(each)).join(', ')
  if (typeof value !== 'object' || value === null) return String(value)
  if ('sheet' in value) return valueWords(value.sheet)
  if ('tack' in value) return say('trials.inkWithTack', { tack: valueWords(value.tack) })
  return JSON.stringify(value)
}

customElements.define('tack-compare-trials', CompareTrials)
