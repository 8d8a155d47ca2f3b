/** The pulls at which each film of the stack would split, as bars on one scale, top of the stack first; and the paper's strength. */
import { css, html, nothing } from 'lit'
import type { FilmAccount, NipAccount } from '../press/account.ts'
import { mainInkOf } from '../press/account.ts'
import { inkLetters } from '../session/letters.ts'
import type { FilmPlace } from './film-name.ts'
import { filmName } from './film-name.ts'
import { linkedText } from './linked-text.ts'
import type { PullScale } from './pull-scale.ts'
import { pullScale } from './pull-scale.ts'
import { say, sayNumber, sayPercent } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

interface Plane {
  label: string
  /** tack units; null where nothing there can break */
  pull: number | null
  /** share of the area in contact in which it broke */
  broke: number
  /** #rrggbb; empty for paper */
  colour: string
}

/** Share of the room that the scale takes: chosen so that a paper's bar that is cut off is seen to be longer. */
const room = 0.85

export class PullBars extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      table {
        /* Fixed, so that a bar of one pull is as long at every unit. */
        table-layout: fixed;
        width: 100%;
        border-collapse: collapse;
        font-size: 0.875rem;
        line-height: 1.125rem;
      }
      th {
        font-weight: 400;
        text-align: start;
        overflow-wrap: anywhere;
      }
      th:first-child {
        width: 40%;
      }
      thead th {
        color: var(--soft);
        font-size: 0.875rem;
        line-height: 1rem;
      }
      th:last-child,
      td:last-child {
        width: 4rem;
        text-align: end;
      }
      tbody th {
        padding-inline-end: 8px;
      }
      td {
        padding: 1px 0;
      }
      .weakest th,
      .weakest td {
        font-weight: 650;
      }
      .bar {
        display: flex;
        gap: 8px;
        align-items: center;
      }
      .length {
        flex: none;
        width: calc((100% - 3rem) * var(--length));
        height: 0.75rem;
        border: 1px solid var(--graphite);
        background: var(--ink);
        forced-color-adjust: none;
      }
      @media (min-width: 106.25em) and (min-height: 56.25em) {
        table {
          font-size: 1.0625rem;
          line-height: 1.375rem;
        }
        thead th {
          font-size: 0.9375rem;
        }
      }
      /* Shown where it has room: beside a lesson. */
      tfoot {
        display: var(--pull-scale, none);
      }
      .scale td {
        padding: 0;
        color: var(--soft);
        font-size: 0.75rem;
        line-height: 0.875rem;
      }
      .marks {
        position: relative;
        height: 0.875rem;
        margin-inline-end: 3rem;
        border-top: 1px solid var(--edge);
      }
      .mark {
        position: absolute;
        inset-inline-start: calc(100% * var(--at));
        padding-inline-start: 2px;
        border-inline-start: 1px solid var(--edge);
      }
      .beyond {
        border-inline-end: 0;
        clip-path: polygon(0 0, 100% 0, calc(100% - 6px) 33%, 100% 66%, calc(100% - 6px) 100%, 0 100%);
      }
    `,
  ]

  override render() {
    const planes = this.#planes()
    const most = Math.max(...planes.map(({ broke }) => broke))
    const { marks } = this.#scale
    return html`<table aria-label=${say('bench.pullsTable')}>
      <thead>
        <tr>
          <th scope="col">${say('bench.inTheStack')}</th>
          <th scope="col">${linkedText(say('bench.pullIn'))}</th>
          <th scope="col">${say('bench.brokeIn')}</th>
        </tr>
      </thead>
      <tbody>
        ${planes.map(
          ({ label, pull, broke, colour }) =>
            html`<tr class=${broke === most && broke > 0 ? 'weakest' : nothing}>
              <th scope="row">${label}</th>
              <td>
                <div class="bar">
                  <span class=${colour ? 'length' : 'length beyond'} aria-hidden="true"></span>
                  <span>${pull === null ? say('bench.cannotBreak') : sayNumber(pull, 1)}</span>
                </div>
              </td>
              <td>${pull === null ? '' : sayPercent(broke, 0.1)}</td>
            </tr>`,
        )}
      </tbody>
      <tfoot aria-hidden="true">
        <tr class="scale">
          <td></td>
          <td>
            <div class="marks">${marks.map((tack) => html`<span class="mark">${sayNumber(tack, 0)}</span>`)}</div>
          </td>
          <td></td>
        </tr>
      </tfoot>
    </table>`
  }

  override updated(): void {
    const planes = this.#planes()
    const { end, marks } = this.#scale
    this.renderRoot.querySelectorAll<HTMLElement>('.mark').forEach((mark, place) => {
      mark.style.setProperty('--at', String((room * marks[place]) / end))
    })
    this.renderRoot.querySelectorAll<HTMLElement>('.length').forEach((bar, place) => {
      const { pull, colour } = planes[place]
      // The paper mostly bears far more than any film pulls: its bar ends torn off at the edge of the scale.
      const length = (room * (pull ?? 0)) / end
      bar.hidden = pull === null
      bar.classList.toggle('beyond', length > 1)
      bar.style.setProperty('--length', String(Math.min(1, length)))
      bar.style.setProperty('--ink', colour || 'var(--paper)')
    })
  }

  get #scale(): PullScale {
    const { results, patch } = this.session
    return pullScale(results.accounts(patch))
  }

  #planes(): Plane[] {
    const { results, patch, playback, setUp, colours } = this.session
    const account = results.accounts(patch)[playback.unit]
    const names = setUp.inks.map((ink) => ink.name)
    const letters = inkLetters(names)
    const { solids } = colours
    const onSheet = account.films.filter((film) => film.thickness > 0).toReversed()
    const plane = (film: FilmAccount, place: FilmPlace): Plane => ({
      label: filmName(film, place, names, letters),
      pull: film.pull,
      broke: film.broke,
      colour: solids[mainInkOf(film)],
    })
    return [
      ...(account.blanket.thickness > 0 ? [plane(account.blanket, 'blanket')] : []),
      ...onSheet.map((film) => plane(film, 'sheet')),
      paperOf(account),
    ]
  }
}

function paperOf({ strength, torn }: NipAccount): Plane {
  return { label: say('bench.paperBears'), pull: strength, broke: torn, colour: '' }
}

customElements.define('tack-pull-bars', PullBars)
