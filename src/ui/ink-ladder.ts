/** The ink ladder: the stair, a row for each ink in the order of the units, and a way to add another. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import { inkLetters } from '../session/letters.ts'
import { moved } from '../session/order.ts'
import './add-ink.ts'
import type { CarryStep, Carried } from './carry.ts'
import { CarryEvent } from './carry.ts'
import type { InkRow } from './ink-row.ts'
import './ink-row.ts'
import type { Tread } from './ink-stair.ts'
import './ink-stair.ts'
import { linkedText } from './linked-text.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'
import { stairSentence } from './stair-sentence.ts'

/** The element that really has the focus, through all shadow roots; null where it is elsewhere. */
function deepFocus(root: ShadowRoot): HTMLElement | null {
  const { activeElement } = root
  if (!(activeElement instanceof HTMLElement)) return null
  return activeElement.shadowRoot ? (deepFocus(activeElement.shadowRoot) ?? activeElement) : activeElement
}

export class InkLadder extends SessionElement {
  static override properties = { _carried: { state: true }, _status: { state: true } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        --ladder-field: 3.5rem;
        --ladder-button: 1.75rem;
        --ladder-name: minmax(6rem, 1fr);
      }
      @media (min-width: 56.25em) and (width < 68.75em) {
        :host {
          --ladder-field: 3.25rem;
          --ladder-name: minmax(6.5rem, 1fr);
        }
      }
      @media (max-width: 30em) {
        :host {
          --ladder-field: 3rem;
          --ladder-name: minmax(4.5rem, 1fr);
        }
      }
      @media (pointer: coarse) {
        :host {
          --ladder-field: 3.5rem;
          --ladder-moves: 5.5rem;
          --ladder-button: 2.75rem;
        }
      }
      .heads,
      ol {
        --ladder-columns: var(--ladder-name) var(--ladder-fields) var(--ladder-moves, var(--ladder-button))
          var(--ladder-button);
      }
      @media (pointer: coarse) and (width < 68.75em), (max-width: 25em) {
        .heads,
        ol {
          --ladder-columns: minmax(0, 1fr) minmax(0, 1fr) max(5.5rem, 88px, 30%) max(44px, 2.75rem);
        }
      }
      .sentence {
        margin: 4px 0 8px;
        font-size: 0.9375rem;
        line-height: 1.25rem;
      }
      .heads {
        display: grid;
        grid-template-columns: var(--ladder-columns);
        gap: 4px;
        color: var(--soft);
        font-size: 0.875rem;
        line-height: 1.125rem;
        text-align: center;
      }
      .heads span:first-child {
        text-align: start;
      }
      /* Each field has its own head there. */
      @media (pointer: coarse) and (width < 68.75em), (max-width: 25em) {
        .heads {
          display: none;
        }
      }
      li + li {
        border-top: 1px solid var(--line);
      }
      .status {
        min-height: 1.25rem;
        margin-top: 4px;
        color: var(--soft);
        font-size: 0.875rem;
        line-height: 1.25rem;
      }
    `,
  ]

  declare _carried: Carried | null
  declare _status: string
  /** the order for which the status was said; in another it would not be true */
  #saidOf = ''
  /** which ink each row showed last, as rows change places under the focus */
  #shown = new Map<InkRow, string>()
  #focused: { ink: string | null; place: number; part: HTMLElement } | null = null

  constructor() {
    super()
    this._carried = null
    this._status = ''
  }

  override render() {
    const treads = this.#treads()
    const shown = this._carried ? moved(treads, this._carried.from, this._carried.to) : treads
    const carried = this._carried?.from ?? null
    const film = this.session.look.measures.film
    return html`
      <h2 class="unseen" id="title">${say('bench.ladder')}</h2>
      ${this.knows('tack', 'tack-number') ? this.#stair(shown, carried) : nothing}
      <div class="heads" aria-hidden="true">
        <span>${say('bench.unitAndInk')}</span>
        ${this.knows('tack', 'tack-number') ? html`<span>${say('bench.tack')}</span>` : nothing}
        ${
          this.knows('form-roller')
            ? html`<span>${say('bench.filmIn', { unit: say(`bench.unit.${film.unit}`) })}</span>`
            : nothing
        }
        ${this.knows('coverage') ? html`<span>${say('bench.coverageHead')}</span>` : nothing}
      </div>
      <ol aria-labelledby="title" @carry=${this.#take} @drag-to=${this.#dragTo}>
        ${repeat(
          shown,
          (tread) => tread.name,
          (tread, place) =>
            html`<li>
              <tack-ink-row
                .session=${this.session}
                .unit=${tread.unit}
                .place=${place}
                .colour=${tread.colour}
                .carried=${tread.unit === carried}
              ></tack-ink-row>
            </li>`,
        )}
      </ol>
      <tack-add-ink .session=${this.session}></tack-add-ink>
      <p class="status" role="status">${this._status || this.#orderHint()}</p>
    `
  }

  #stair(treads: Tread[], carried: number | null) {
    return html`<tack-ink-stair
        .treads=${treads}
        .carried=${carried}
        .current=${this.session.playback.unit}
        @carry=${this.#take}
        @look=${(event: CustomEvent<number>) => this.session.play({ kind: 'look at unit', unit: event.detail })}
      ></tack-ink-stair>
      <p class="sentence">${linkedText(stairSentence(treads))}</p>`
  }

  #orderHint(): string {
    if (this.isClosed('order')) return say('bench.orderKept')
    return say(this.session.look.known ? 'bench.carryHintAlone' : 'bench.carryHint')
  }

  override willUpdate(changed: PropertyValues): void {
    const order = this.session.setUp.inks.map(({ name }) => name).join('\n')
    if (order !== this.#saidOf && !changed.has('_status')) this._status = ''
    this.#saidOf = order
    this.#tellChange()
    const part = deepFocus(this.renderRoot as ShadowRoot)
    if (!part) return
    const place = this.#rows.findIndex((row) => row.matches(':focus-within'))
    this.#focused = { part, place, ink: place < 0 ? null : (this.#shown.get(this.#rows[place]) ?? null) }
  }

  override updated(changed: PropertyValues): void {
    super.updated(changed)
    const fields = ['tack-number', 'form-roller', 'coverage'].filter((term) => this.knows(term)).length
    // A lesson leaves out what it has not come to; a list of no columns is a blank.
    this.style.setProperty('--ladder-fields', fields > 0 ? `repeat(${fields}, var(--ladder-field))` : ' ')
    this.#shown = new Map(this.#rows.map((row) => [row, row.ink?.name ?? '']))
    const focused = this.#focused
    this.#focused = null
    if (focused) void this.#keepFocus(focused)
  }

  /** Says that an ink has come or gone, whichever control did it; a whole new set speaks for itself. */
  #tellChange(): void {
    const names = this.session.setUp.inks.map(({ name }) => name)
    const before = Array.from(this.#shown.values())
    if (before.length === 0 || Math.abs(names.length - before.length) !== 1) return
    const added = names.findIndex((name) => !before.includes(name))
    const removed = before.find((name) => !names.includes(name))
    const units = names.length
    if (removed === undefined) this._status = say('bench.inkAdded', { name: names[added], unit: added + 1, units })
    else if (added < 0) this._status = say('bench.inkRemoved', { name: removed, units })
  }

  /** Moving an element in the page takes the focus from it, and a removed one has none to give back. */
  async #keepFocus({ ink, place, part }: { ink: string | null; place: number; part: HTMLElement }): Promise<void> {
    const rows = this.#rows
    await Promise.all(rows.map((row) => row.updateComplete))
    const added = this.renderRoot.querySelector<SessionElement>('tack-add-ink')
    await added?.updateComplete
    const now = deepFocus(this.renderRoot as ShadowRoot)
    if (now && !now.matches(':disabled')) return
    if (part.isConnected && !part.matches(':disabled')) {
      part.focus()
      return
    }
    const same = rows.find((row) => row.ink?.name === ink)
    const near = place < 0 ? rows.length - 1 : Math.min(place, rows.length - 1)
    ;(same ?? rows[near]).focusHandle()
  }

  get #rows(): InkRow[] {
    return Array.from(this.renderRoot.querySelectorAll<InkRow>('tack-ink-row'))
  }

  #treads(): Tread[] {
    const { inks } = this.session.setUp
    const letters = inkLetters(inks.map((ink) => ink.name))
    const { solids } = this.session.colours
    return inks.map(({ name, tack }, unit) => ({ name, tack, unit, letter: letters[unit], colour: solids[unit] }))
  }

  #take(event: Event): void {
    event.stopPropagation()
    if (!(event instanceof CarryEvent)) return
    this.#do(event.step)
  }

  #do(step: CarryStep): void {
    if (this.isClosed('order')) {
      this._status = say('bench.orderKept')
      return
    }
    const { inks } = this.session.setUp
    const carried = this._carried
    const name = inks[step.kind === 'lift' || step.kind === 'send' ? step.unit : (carried?.from ?? 0)].name
    const values = { name, units: inks.length }
    switch (step.kind) {
      case 'lift':
        this._carried = { from: step.unit, to: step.unit }
        this._status = say('bench.lifted', { ...values, unit: step.unit + 1 })
        return
      case 'by':
      case 'to': {
        if (!carried) return
        const place = step.kind === 'to' ? step.place : carried.to + step.places
        const to = Math.min(inks.length - 1, Math.max(0, place))
        if (to === carried.to) return
        this._carried = { ...carried, to }
        this._status = say('bench.carriedTo', { ...values, unit: to + 1 })
        return
      }
      case 'set down':
        this._carried = null
        if (!carried) return
        if (carried.to !== carried.from) this.attempt({ kind: 'move ink', ...carried })
        this._status = say('bench.setDown', { ...values, unit: carried.to + 1 })
        return
      case 'return':
        this._carried = null
        if (carried) this._status = say('bench.returned', { ...values, unit: carried.from + 1 })
        return
      case 'send': {
        this._carried = null
        const problem = this.attempt({ kind: 'move ink', from: step.unit, to: step.place })
        this._status =
          problem === null
            ? say('bench.setDown', { ...values, unit: step.place + 1 })
            : say('bench.noSuchUnit', { ...values, unit: step.place + 1 })
      }
    }
  }

  /** A row dragged to a height takes the place after the rows whose middle lies above it. */
  #dragTo(event: Event): void {
    const y = (event as CustomEvent<number>).detail
    const place = this.#rows.filter((row) => !row.carried && row.middle < y).length
    this.#do({ kind: 'to', place })
  }
}

customElements.define('tack-ink-ladder', InkLadder)
