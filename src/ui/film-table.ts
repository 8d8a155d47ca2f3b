/** The section picture in numbers: every film before and after the nip, its pull, and where the stack broke. */
import { html } from 'lit'
import { inkLetters } from '../session/letters.ts'
import { toShown } from '../session/measures.ts'
import { filmName } from './film-name.ts'
import { linkedText } from './linked-text.ts'
import { say, sayNumber, sayPercent } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import { tableStyles } from './table-styles.ts'

export class FilmTable extends SessionElement {
  static override styles = [sharedStyles, tableStyles]

  override render() {
    const { setUp, results, playback, patch, look } = this.session
    const names = setUp.inks.map((ink) => ink.name)
    const letters = inkLetters(names)
    const film = look.measures.film
    const unit = say(`bench.unit.${film.unit}`)
    const account = results.accounts(patch)[playback.unit]
    const shown = (thickness: number) => sayNumber(toShown(thickness, film), 2)
    const after = (layer: number) => shown(account.after.find((each) => each.unit === layer)?.thickness ?? 0)
    const planes = [
      { ...account.blanket, place: 'blanket' as const },
      ...account.films.toReversed().map((each) => ({ ...each, place: 'sheet' as const })),
    ].filter(({ thickness }) => thickness > 0)
    return html`
      <table>
        <thead>
          <tr>
            <th scope="col">${say('bench.film')}</th>
            <th scope="col">${say('bench.thicknessBefore', { unit })}</th>
            <th scope="col">${linkedText(say('bench.pullIn'))}</th>
            <th scope="col">${say('bench.brokeIn')}</th>
            <th scope="col">${say('bench.left', { unit })}</th>
          </tr>
        </thead>
        <tbody>
          ${planes.map(
            (plane) =>
              html`<tr>
                <th scope="row">${filmName(plane, plane.place, names, letters)}</th>
                <td>${shown(plane.thickness)}</td>
                <td>${plane.pull === null ? say('bench.cannotBreak') : sayNumber(plane.pull, 1)}</td>
                <td>${sayPercent(plane.broke, 0.1)}</td>
                <td>${after(plane.unit)}</td>
              </tr>`,
          )}
          <tr>
            <th scope="row">${say('bench.paperBears')}</th>
            <td></td>
            <td>${sayNumber(account.strength, 1)}</td>
            <td>${sayPercent(account.torn, 0.1)}</td>
            <td></td>
          </tr>
        </tbody>
      </table>
    `
  }
}

customElements.define('tack-film-table', FilmTable)
