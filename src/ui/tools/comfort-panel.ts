/** What suits the person at the page: colours, motion, sound, units. It holds at once, and is kept for the next time. */
import { css, html } from 'lit'
import type { Settings } from '../../session/settings.ts'
import { motions, themes } from '../../session/settings.ts'
import type { Quantity } from '../../session/unit-names.ts'
import { unitNames } from '../../session/unit-names.ts'
import { comfort } from '../comfort.ts'
import '../measure-choice.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { toolStyles } from './tool-styles.ts'

export class ComfortPanel extends SessionElement {
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      :host {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 15rem), 1fr));
        gap: 16px 24px;
      }
      legend {
        margin-bottom: 4px;
      }
      label {
        display: flex;
        gap: 4px;
        align-items: center;
        min-height: 1.75rem;
      }
      .measures {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
      }
      :host > .note {
        grid-column: 1 / -1;
      }
      @media (pointer: coarse) {
        label {
          min-height: 44px;
        }
      }
    `,
  ]

  override render() {
    const { theme = 'auto', motion = 'auto', sound = false } = comfort().settings
    const quantities = Object.keys(unitNames) as Quantity[]
    return html`
      ${this.#oneOf('theme', themes, theme)} ${this.#oneOf('motion', motions, motion)}
      <fieldset>
        <legend>${say('comfort.sound')}</legend>
        <label>
          <input
            type="checkbox"
            .checked=${sound}
            @change=${(event: Event) => this.#choose({ sound: (event.target as HTMLInputElement).checked })}
          />
          ${say('comfort.soundOn')}
        </label>
        <p class="note">${say('comfort.soundMeans')}</p>
      </fieldset>
      <fieldset>
        <legend>${say('comfort.measures')}</legend>
        <div class="measures">
          ${quantities.map(
            (quantity) =>
              html`<tack-measure-choice .session=${this.session} .quantity=${quantity}></tack-measure-choice>`,
          )}
        </div>
      </fieldset>
      <p class="note">${say(comfort().keeps ? 'comfort.kept' : 'comfort.notKept')}</p>
    `
  }

  #oneOf<Field extends 'theme' | 'motion'>(
    field: Field,
    options: readonly NonNullable<Settings[Field]>[],
    chosen: NonNullable<Settings[Field]>,
  ) {
    return html`<fieldset>
      <legend>${say(`comfort.${field}`)}</legend>
      ${options.map(
        (option) =>
          html`<label>
            <input
              type="radio"
              name=${field}
              .checked=${option === chosen}
              @change=${() => this.#choose({ [field]: option })}
            />
            ${say(`comfort.${field}.${option}` as Parameters<typeof say>[0])}
          </label>`,
      )}
    </fieldset>`
  }

  #choose(part: Settings): void {
    comfort().choose(part)
  }
}

customElements.define('tack-comfort-panel', ComfortPanel)
