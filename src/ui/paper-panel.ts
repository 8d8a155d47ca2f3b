/** The paper: which one, how strong, how absorbent and how even its surface is. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { PaperName } from '../physics/paper.ts'
import { paperNames, papers } from '../physics/paper.ts'
import type { RangeName } from '../press/ranges.ts'
import { ranges } from '../press/ranges.ts'
import type { PaperField } from '../session/change.ts'
import './number-field.ts'
import { isRoomy } from './roomy.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

const fields = ['surfaceStrength', 'absorbency', 'evenness'] satisfies (PaperField & RangeName)[]
const controls = { surfaceStrength: 'surface strength', absorbency: 'absorbency', evenness: 'paper' } as const

/** The word of the glossary for each. */
const terms: Record<PaperName, string> = {
  coated: 'coated-paper',
  'light-weight coated': 'light-weight-coated',
  uncoated: 'uncoated-paper',
  'weak uncoated': 'uncoated-paper',
  newsprint: 'newsprint',
}

export class PaperPanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, unfolded: { type: Boolean } }
  static override styles = [
    sharedStyles,
    css`
      .head {
        display: flex;
        align-items: center;
        gap: 8px;
      }
      select {
        flex: 1;
        min-width: 0;
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(3, minmax(0, 1fr));
        gap: 8px;
        margin-top: 8px;
      }
      button {
        margin-top: 8px;
      }
    `,
  ]

  /** stands open at first whatever the room, as a lesson asks for what is in it */
  declare unfolded: boolean

  constructor() {
    super()
    this.unfolded = false
  }

  override render() {
    const { paper } = this.session.setUp
    const supplied = papers[paper.base]
    const changed = fields.some((field) => paper[field] !== supplied[field])
    return html`
      <details ?open=${this.unfolded || isRoomy()}>
        <summary>
          <h2>${say('bench.paper')}</h2>
          <span> ${say('bench.paperNow', { paper: say(`bench.paper.${paper.base}`), changed: String(changed) })} </span>
        </summary>
        <div class="head">
          <label for="paper">${say('bench.paperKind')}</label>
          <select id="paper" ?disabled=${this.isClosed('paper')} @change=${this.#take}>
            ${paperNames
              .filter((name) => name === paper.base || this.knows(terms[name]))
              .map(
                (name) =>
                  html`<option value=${name} ?selected=${name === paper.base}>${say(`bench.paper.${name}`)}</option>`,
              )}
          </select>
        </div>
        <div class="fields">
          ${fields
            .filter((field) => this.isShown(...(field === 'evenness' ? [] : [controls[field]])))
            .map(
              (field) =>
                html`<tack-number-field
                  .label=${say(`bench.${field}`)}
                  ?disabled=${this.isClosed(controls[field])}
                  .unit=${say(`bench.unitOf.${field}`)}
                  .least=${ranges[field].least}
                  .most=${ranges[field].most}
                  .step=${ranges[field].step}
                  .value=${paper[field]}
                  .offer=${(value: number) => this.#edit(field, value)}
                ></tack-number-field>`,
            )}
        </div>
        ${
          changed && !this.isClosed('paper')
            ? html`<button type="button" @click=${() => this.attempt({ kind: 'take paper', paper: paper.base })}>
                ${say('bench.asSupplied')}
              </button>`
            : nothing
        }
      </details>
    `
  }

  override updated(): void {
    // Undo changes the paper while the select still holds what was picked.
    const select = this.renderRoot.querySelector('select') as HTMLSelectElement
    select.value = this.session.setUp.paper.base
  }

  #take(event: Event): void {
    this.attempt({ kind: 'take paper', paper: (event.target as HTMLSelectElement).value as PaperName })
  }

  #edit(field: PaperField, value: number): string | null {
    return this.attempt({ kind: 'edit paper', field, value })
  }
}

customElements.define('tack-paper-panel', PaperPanel)
