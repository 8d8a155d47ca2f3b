/** Puts what is loaded now on the shelf under a name: one of the inks, the paper, or the press. */
import { css, html, nothing } from 'lit'
import type { Shelf } from '../../measure/shelf.ts'
import { putOnShelf } from '../../measure/shelf-change.ts'
import { writtenPaper, writtenPress } from '../../measure/written-setup.ts'
import { longestName } from '../../press/ranges.ts'
import { say, sayName } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { nameProblem } from './shelf-name.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'

export class ShelfSaver extends StripElement {
  static override properties = { list: {}, _problem: { state: true }, _said: { state: true } }
  static override styles = [
    sharedStyles,
    stripStyles,
    css`
      form {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: end;
        margin-top: 8px;
      }
      label {
        display: grid;
        font-size: 0.875rem;
      }
      input {
        width: 10rem;
        padding: 0 8px;
      }
    `,
  ]

  declare list: 'inks' | 'papers' | 'presses'
  declare _problem: string | null
  declare _said: string | null

  constructor() {
    super()
    this._problem = null
    this._said = null
  }

  override render() {
    return html`<form @submit=${this.#save}>
        ${
          this.list === 'inks'
            ? html`<label
                >${say('strip.whichInk')}<select name="ink">
                  ${this.inkNames.map((name, unit) => html`<option value=${unit}>${sayName(name)}</option>`)}
                </select></label
              >`
            : nothing
        }
        <label
          >${say('strip.nameIt')}
          <input
            type="text"
            name="name"
            autocomplete="off"
            maxlength=${longestName}
            aria-describedby="problem"
            aria-invalid=${this._problem === null ? 'false' : 'true'}
        /></label>
        <button type="submit">${say(`strip.save.${this.list}`)}</button>
      </form>
      <p id="problem" class=${this._problem === null ? 'note' : 'mark'} role="status">
        ${this._problem ?? this._said ?? nothing}
      </p>`
  }

  readonly #save = (event: Event): void => {
    event.preventDefault()
    const form = event.target as HTMLFormElement
    const typed = new FormData(form)
    const text = typed.get('name')
    const name = typeof text === 'string' ? text.trim() : ''
    this._said = null
    this._problem = nameProblem(name)
    if (this._problem !== null) return
    const { shelf, replaced } = putOnShelf(this.desk.state.shelf, this.#entry(name, Number(typed.get('ink'))))
    this.desk.set({ shelf })
    this._said = say(replaced.length > 0 ? 'strip.savedOver' : 'strip.saved', { name })
    form.reset()
  }

  #entry(name: string, unit: number): Partial<Pick<Shelf, 'inks' | 'papers' | 'presses'>> {
    const { paper, press } = this.session.setUp
    switch (this.list) {
      case 'inks':
        return { inks: [{ ...this.#coloured(unit), name }] }
      case 'papers':
        return { papers: [writtenPaper(paper, name)] }
      case 'presses':
        return { presses: [{ name, press: writtenPress(press) }] }
    }
  }

  /** Under another name a process ink would lose the colour that its name gives it, so it takes it along. */
  #coloured(unit: number) {
    const ink = this.session.setUp.inks[unit]
    const { solid } = this.strip.colours[unit]
    return ink.colour === undefined && solid ? { ...ink, colour: solid } : ink
  }
}

customElements.define('tack-shelf-saver', ShelfSaver)
