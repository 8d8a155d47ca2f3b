/** The shelf: own inks, papers and presses put there under a name, used again, saved to a file and read from one. */
import { css, html, nothing } from 'lit'
import type { Control } from '../../lesson/control.ts'
import { readShelf } from '../../measure/check-shelf.ts'
import { writeShelf } from '../../measure/shelf.ts'
import { putOnShelf, setUpWithPress, takeOffShelf } from '../../measure/shelf-change.ts'
import type { ShelfPress } from '../../measure/shelf.ts'
import type { WrittenInk, WrittenPaper } from '../../measure/written-setup.ts'
import type { Problem } from '../../press/problem.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { linkedText } from '../linked-text.ts'
import { sayProblem } from '../problem-words.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import './new-ink.ts'
import { saveText } from './save-text.ts'
import './shelf-saver.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'

type List = 'inks' | 'papers' | 'presses'
const lists: readonly List[] = ['inks', 'papers', 'presses']

/** A lesson that closes this control keeps the entries of the list off the bench. */
const controlOf = { inks: 'inks', papers: 'paper', presses: 'kind' } as const satisfies Record<List, Control>

export class ShelfPanel extends StripElement {
  static override properties = { _said: { state: true }, _problems: { state: true } }
  static override styles = [
    sharedStyles,
    stripStyles,
    css`
      .lists {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 18.75rem), 1fr));
        gap: 16px 32px;
      }
      li {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 8px;
        align-items: center;
        padding: 4px 0;
        border-bottom: 1px solid var(--line);
      }
      li > span:first-child {
        flex: 1 1 8.75rem;
        overflow-wrap: anywhere;
      }
      li .note {
        display: block;
      }
    `,
  ]

  declare _said: string | null
  declare _problems: readonly string[]

  constructor() {
    super()
    this._said = null
    this._problems = []
  }

  override render() {
    const { shelf } = this.desk.state
    const { session } = this
    return html`
      <h2>${say('strip.shelf')}</h2>
      <p>${say('strip.shelfIntro')}</p>
      <div role="status">
        ${this._said === null ? nothing : html`<p>${this._said}</p>`}
        ${this._problems.map((problem) => html`<p class="mark">${problem}</p>`)}
      </div>
      <div class="lists">
        <section>
          <h3>${linkedText(say('strip.inks'))}</h3>
          ${this.#list('inks', shelf.inks, (ink) => this.#useInk(ink), inkNote)}
          <tack-new-ink .session=${session}></tack-new-ink>
          <tack-shelf-saver .session=${session} .list=${'inks'}></tack-shelf-saver>
        </section>
        <section>
          <h3>${linkedText(say('strip.papers'))}</h3>
          ${this.#list('papers', shelf.papers, (paper) => this.#usePaper(paper), paperNote)}
          <tack-shelf-saver .session=${session} .list=${'papers'}></tack-shelf-saver>
        </section>
        <section>
          <h3>${linkedText(say('strip.presses'))}</h3>
          ${this.#list('presses', shelf.presses, (press) => this.#usePress(press), pressNote)}
          <tack-shelf-saver .session=${session} .list=${'presses'}></tack-shelf-saver>
        </section>
      </div>
      <h3>${say('strip.shelfFile')}</h3>
      <div class="row">
        <button
          type="button"
          ?disabled=${lists.every((list) => shelf[list].length === 0)}
          @click=${() => saveText('shelf.json', 'application/json', writeShelf(shelf))}
        >
          ${say('strip.shelfSave')}
        </button>
        <label
          >${say('strip.shelfOpen')}<br /><input type="file" accept=".json,application/json" @change=${this.#open}
        /></label>
      </div>
    `
  }

  #list<Entry extends { readonly name: string }>(
    list: List,
    entries: readonly Entry[],
    use: (entry: Entry) => readonly string[],
    note: (entry: Entry) => string,
  ) {
    if (entries.length === 0) return html`<p class="note">${say(`strip.none.${list}`)}</p>`
    return html`<ul>
      ${entries.map(
        (entry) =>
          html`<li>
            <span>${entry.name}<span class="note">${note(entry)}</span></span>
            <button
              type="button"
              ?disabled=${this.isClosed(controlOf[list])}
              aria-label=${say(`strip.useThat.${list}`, { name: entry.name })}
              @click=${() => this.#tell(say('strip.used', { name: entry.name }), use(entry))}
            >
              ${say(`strip.use.${list}`)}
            </button>
            <button
              type="button"
              class="plain"
              aria-label=${say('strip.takeOffThat', { name: entry.name })}
              @click=${() => this.#takeOff(list, entry.name)}
            >
              ${say('strip.takeOff')}
            </button>
          </li>`,
      )}
    </ul>`
  }

  /** Each use is one change of the set-up, which the bench can undo; what comes back are the reasons why not. */
  #useInk(ink: WrittenInk): string[] {
    const loaded = this.inkNames.indexOf(ink.name)
    if (loaded < 0) return this.#messages(this.session.change({ kind: 'add ink', ink }))
    const written = writeSetUp(this.session.setUp)
    return this.#load({ ...written, inks: written.inks.map((each, unit) => (unit === loaded ? ink : each)) })
  }

  #usePaper(paper: WrittenPaper): string[] {
    return this.#load({ ...writeSetUp(this.session.setUp), paper })
  }

  #usePress(press: ShelfPress): string[] {
    const checked = setUpWithPress(this.session.setUp, press)
    return 'problems' in checked ? this.#messages(checked.problems) : this.#load(writeSetUp(checked.setUp))
  }

  #load(given: unknown): string[] {
    return this.#messages(this.session.change({ kind: 'load', given }))
  }

  #messages(problems: readonly Problem[]): string[] {
    return problems.map(sayProblem)
  }

  #takeOff(list: List, name: string): void {
    this.desk.set({ shelf: takeOffShelf(this.desk.state.shelf, list, name) })
    this.#tell(say('strip.tookOff', { name }), [])
  }

  #tell(said: string, problems: readonly string[]): void {
    this._problems = problems
    this._said = problems.length > 0 ? null : said
  }

  readonly #open = async (event: Event): Promise<void> => {
    const input = event.target as HTMLInputElement
    const file = input.files?.[0]
    if (!file) return
    const read = readShelf(await file.text())
    input.value = ''
    if ('problems' in read) {
      this.#tell(
        '',
        read.problems.map((found) => (found.path === '' ? sayProblem(found) : `${found.path}: ${sayProblem(found)}`)),
      )
      return
    }
    const { shelf, replaced } = putOnShelf(this.desk.state.shelf, read.shelf)
    this.desk.set({ shelf })
    const names = replaced.map(({ name }) => name)
    this.#tell(say('strip.opened', { count: names.length, names: names.join(', ') }), [])
  }
}

function inkNote(ink: WrittenInk): string {
  return say('strip.inkNote', { tack: sayNumber(ink.tack, 0, 1), film: sayNumber(ink.film, 0, 2) })
}

function paperNote({ base }: WrittenPaper): string {
  return base === undefined ? '' : say('strip.paperNote', { base: say(`bench.paper.${base}`) })
}

function pressNote({ press, fit }: ShelfPress): string {
  const speed = press.speed === undefined ? '' : say('strip.pressNote', { speed: sayNumber(press.speed, 0, 1) })
  const how = fit ? say('strip.fitNoteShort', { readings: fit.readings, deviation: sayNumber(fit.deviation, 3) }) : ''
  return [speed, how].filter(Boolean).join(' ')
}

customElements.define('tack-shelf-panel', ShelfPanel)
