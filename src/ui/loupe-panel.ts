/** The loupe with what belongs to it: ink or marks, and the row that the section cuts through. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import type { Look } from '../session/look.ts'
import { pictureCells } from '../session/results.ts'
import type { ChooseEvent } from './choice.ts'
import './choice.ts'
import './loupe-picture.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class LoupePanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, untitled: { type: Boolean } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-direction: column;
        gap: 4px;
      }
      .title {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 8px;
        align-items: center;
        justify-content: space-between;
      }
      tack-loupe-picture {
        flex: 1;
        min-height: 8.75rem;
      }
      label {
        display: flex;
        gap: 8px;
        align-items: center;
        font-size: 0.875rem;
        line-height: 1.125rem;
      }
      input {
        flex: 1;
        min-width: 3.75rem;
        min-height: 24px;
        padding: 0;
        border: 0;
        background: none;
      }
    `,
  ]

  /** its name stands elsewhere, where it was chosen */
  declare untitled: boolean

  constructor() {
    super()
    this.untitled = false
  }

  override render() {
    const { session } = this
    return html`
      <div class="title">
        <h2 class=${this.untitled ? 'unseen' : nothing}>${say('bench.loupe')}</h2>
        ${
          this.knows('film-splitting', 'picking')
            ? html`<tack-choice
                .legend=${say('bench.face')}
                .options=${(['ink', 'marks'] as const).map((value) => ({ value, label: say(`bench.face.${value}`) }))}
                .value=${session.look.face}
                @choose=${(event: ChooseEvent) => session.lookWith({ face: event.value as Look['face'] })}
              ></tack-choice>`
            : nothing
        }
      </div>
      <tack-loupe-picture .session=${session}></tack-loupe-picture>
      ${
        this.knows('nip')
          ? html`<label
              >${say('bench.cut')}
              <input
                type="range"
                min="0"
                max=${pictureCells - 1}
                .value=${String(session.look.row)}
                aria-valuetext=${say('bench.cutAt', { below: (session.look.row + 0.5) / pictureCells })}
                @input=${(event: Event) => session.lookWith({ row: Number((event.target as HTMLInputElement).value) })}
              />
            </label>`
          : nothing
      }
    `
  }
}

customElements.define('tack-loupe-panel', LoupePanel)
