/** The trials: pin what is on the bench, the table of what was tried, and what changed between two rows. */
import { css, html, nothing } from 'lit'
import type { Table } from '../../report/csv.ts'
import { mannerOf, writeCsv } from '../../report/csv.ts'
import { Colours } from '../../session/colours.ts'
import type { Trial } from '../../session/saved.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import type { Drawing } from '../../view/svg-file.ts'
import { linkedText } from '../linked-text.ts'
import { colourSolids } from '../orders/colour-solids.ts'
import { inPercent, orderTreads } from '../orders/order-words.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import type { StairRow } from '../pictures/stairs-for-paper.ts'
import { stairsForPaper } from '../pictures/stairs-for-paper.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveText } from '../strip/save-text.ts'
import { tableStyles } from '../table-styles.ts'
import './compare-trials.ts'
import './pin-trial.ts'
import { trialStyles } from './trial-styles.ts'
import type { TrialReading } from './trials-element.ts'
import { TrialsElement, orderOf, readTrial, sheetOf, trialReadings } from './trials-element.ts'

/** Trials in one picture; more do not stay legible on a page. */
const onPaper = 20

export class TrialsView extends TrialsElement {
  static override properties = { _said: { state: true }, _removed: { state: true } }
  static override styles = [
    sharedStyles,
    ordersStyles,
    tableStyles,
    trialStyles,
    css`
      td,
      tbody th {
        padding-top: 4px;
        padding-bottom: 4px;
      }
      td.words {
        min-width: 7.5rem;
      }
      td textarea {
        min-width: 12.5rem;
      }
      td .note {
        display: block;
      }
      td button {
        margin: 2px 0;
      }
    `,
  ]

  declare _said: string
  declare _removed: { trial: Trial; index: number } | null

  constructor() {
    super()
    this._said = ''
    this._removed = null
  }

  get pictureName(): string {
    return say('trials.table')
  }

  get summary(): string {
    const { list } = this.trials
    return say('trials.picture', {
      count: list.length,
      names: list
        .slice(0, onPaper)
        .map(({ name }) => name)
        .join(', '),
    })
  }

  /** The trials as a picture, once there are any. */
  get printed(): (() => Drawing) | undefined {
    const { list } = this.trials
    return list.length > 0
      ? () => stairsForPaper(list.slice(0, onPaper).map((trial, at) => this.#paperRow(trial, at)))
      : undefined
  }

  #paperRow(trial: Trial, at: number): StairRow {
    const { inks } = trial.setUp
    const results = this.trials.results(trial)
    const read = results ? readTrial(results) : null
    return {
      place: String(at + 1),
      treads: orderTreads(
        [...inks.keys()],
        inks,
        colourSolids({ setUp: trial.setUp, colours: new Colours(trial.setUp) }),
      ),
      title: trial.name,
      lines: [
        orderOf(trial),
        `${say('trials.reading')}: ${sheetOf(trial)}`,
        ...(read ? [say('trials.pictureReadings', percentOf(read))] : []),
      ],
    }
  }

  override render() {
    const { session, trials } = this
    const { list } = trials
    return html`<main>
      <div class="panel">
        <h2>${say('trials.title')}</h2>
        <p>${linkedText(say('trials.intro'))}</p>
      </div>
      <tack-pin-trial class="panel" .session=${session}></tack-pin-trial>
      <div class="panel">
        <h3>${say('trials.table')}</h3>
        ${list.length === 0 ? html`<p class="note">${say('trials.none')}</p>` : this.#table(list)}
        <div class="row">
          <p role="status">${this._said}</p>
          ${
            this._removed
              ? html`<button type="button" @click=${() => this.#putBack()}>${say('trials.putBack')}</button>`
              : nothing
          }
        </div>
      </div>
      ${list.length > 1 ? html`<tack-compare-trials class="panel" .session=${session}></tack-compare-trials>` : nothing}
    </main>`
  }

  #table(list: readonly Trial[]) {
    return html`<div class="scroll" tabindex="0" role="region" aria-label=${say('trials.table')}>
        <table>
          <thead>
            <tr>
              <th scope="col">${say('trials.number')}</th>
              <th scope="col" class="words">${say('trials.name')}</th>
              <th scope="col" class="words">${say('trials.order')}</th>
              <th scope="col">${say('trials.reading')}</th>
              ${trialReadings.map((name) => html`<th scope="col">${say(`trials.${name}`)}</th>`)}
              <th scope="col" class="words">${say('trials.prediction')}</th>
              <th scope="col" class="words">${say('trials.note')}</th>
              <th scope="col" class="words">${say('trials.use')}</th>
            </tr>
          </thead>
          <tbody>
            ${list.map((trial, index) => this.#row(trial, index))}
          </tbody>
        </table>
      </div>
      <div class="row">
        <button type="button" @click=${() => this.#save(list)}>${say('trials.csv')}</button>
      </div>`
  }

  #row(trial: Trial, index: number) {
    const { name } = trial
    return html`<tr>
      <th scope="row">${index + 1}</th>
      <td class="words">${name}</td>
      <td class="words">${orderOf(trial)}</td>
      <td>${sheetOf(trial)}</td>
      ${this.#readings(trial)}
      <td class="words">${this.#text(trial, index, 'prediction')}</td>
      <td class="words">${this.#text(trial, index, 'note')}</td>
      <td class="words">
        <button type="button" aria-label=${say('trials.loadNamed', { name })} @click=${() => this.#load(trial)}>
          ${say('trials.load')}
        </button>
        <button type="button" aria-label=${say('trials.removeNamed', { name })} @click=${() => this.#remove(index)}>
          ${say('trials.remove')}
        </button>
      </td>
    </tr>`
  }

  #readings(trial: Trial) {
    const results = this.trials.results(trial)
    if (!results) return html`<td class="words" colspan=${trialReadings.length}>${say('trials.farSheet')}</td>`
    const read = readTrial(results)
    const [earlier, later] = read.pair.map((unit) => trial.setUp.inks[unit].name)
    return trialReadings.map(
      (name) =>
        html`<td>
          ${inPercent(read[name])}
          ${
            name === 'leastTrap' ? html`<span class="note">${say('trials.onPair', { later, earlier })}</span>` : nothing
          }
        </td>`,
    )
  }

  #text(trial: Trial, index: number, field: 'prediction' | 'note') {
    return html`<textarea
      rows="2"
      maxlength="6000"
      aria-label=${say(`trials.${field}Of`, { name: trial.name })}
      .value=${trial[field] ?? ''}
      @change=${(event: Event) =>
        this.trials.edit(index, { [field]: (event.target as HTMLTextAreaElement).value.trim() })}
    ></textarea>`
  }

  #load({ name, setUp }: Trial): void {
    const problem = this.attempt({ kind: 'load', given: writeSetUp(setUp) })
    this._removed = null
    this._said = problem ?? say('trials.loaded', { name })
  }

  #remove(index: number): void {
    const trial = this.trials.list[index]
    this._removed = { trial, index }
    this._said = say('trials.removed', { name: trial.name })
    this.trials.remove(index)
  }

  #putBack(): void {
    if (!this._removed) return
    const { trial, index } = this._removed
    this.trials.take(this.trials.list.toSpliced(index, 0, trial))
    this._removed = null
    this._said = ''
  }

  #save(list: readonly Trial[]): void {
    const table: Table = {
      columns: [
        { heading: say('trials.number'), unit: null },
        { heading: say('trials.name'), unit: null },
        { heading: say('trials.order'), unit: null },
        { heading: say('trials.csvTacks'), unit: say('trials.tackUnits') },
        { heading: say('trials.csvPaper'), unit: null },
        { heading: say('trials.csvPress'), unit: null },
        { heading: say('trials.csvSpeed'), unit: 'm/s' },
        { heading: say('trials.reading'), unit: null },
        { heading: say('trials.csvPair'), unit: null },
        ...trialReadings.map((name) => ({ heading: say(`trials.csv.${name}`), unit: '%' })),
        { heading: say('trials.prediction'), unit: null },
        { heading: say('trials.note'), unit: null },
      ],
      rows: list.map((trial, index) => {
        const { name, note, prediction = '', setUp } = trial
        const results = this.trials.results(trial)
        const read = results && readTrial(results)
        const [earlier, later] = read ? read.pair.map((unit) => setUp.inks[unit].name) : ['', '']
        return [
          index + 1,
          name,
          orderOf(trial),
          setUp.inks.map(({ tack }) => tack).join(', '),
          setUp.paper.name,
          setUp.press.kind,
          setUp.press.speed,
          sheetOf(trial),
          read ? say('trials.onPair', { later, earlier }) : null,
          ...trialReadings.map((each) => (read ? 100 * read[each] : null)),
          prediction,
          note,
        ]
      }),
    }
    saveText('trials.csv', 'text/csv', writeCsv(table, mannerOf(navigator.language)))
  }
}

function percentOf(read: Record<TrialReading, number>): Record<TrialReading, string> {
  return Object.fromEntries(trialReadings.map((name) => [name, inPercent(read[name])])) as Record<TrialReading, string>
}

customElements.define('tack-trials-view', TrialsView)
