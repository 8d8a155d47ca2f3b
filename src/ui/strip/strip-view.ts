/** The strip: the printed sheet as a densitometer and the eye see it, and what is made of such readings. */
import { css, html } from 'lit'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { linkedText } from '../linked-text.ts'
import '../reading-switch.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { viewStyles } from '../view-styles.ts'
import './colour-panel.ts'
import './densitometer.ts'
import './formula-practice.ts'
import './patch-strip.ts'
import './shelf-panel.ts'
import './sheet-panel.ts'
import './spectrum-panel.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import './trap-panel.ts'

const parts = ['strip', 'sheet', 'practice', 'shelf'] as const
type Part = (typeof parts)[number]

export class StripView extends StripElement {
  static override properties = { _part: { state: true } }
  static override styles = [
    sharedStyles,
    viewStyles,
    stripStyles,
    css`
      .readings {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
      }
      @media (min-width: 56.25em) {
        .readings {
          grid-template: 'meter trap' auto 'spectrum colour' auto / minmax(0, 2fr) minmax(0, 3fr);
        }
      }
      @media (min-width: 81.25em) {
        .readings {
          grid-template:
            'meter trap colour' auto
            'spectrum trap colour' 1fr / minmax(18.125rem, 4fr) minmax(0, 6fr) minmax(18.125rem, 4fr);
        }
      }
      tack-densitometer {
        grid-area: meter;
      }
      tack-trap-panel {
        grid-area: trap;
      }
      tack-colour-panel {
        grid-area: colour;
      }
      tack-spectrum-panel {
        grid-area: spectrum;
      }
      @media (width < 56.25em) {
        .readings > * {
          grid-area: auto;
        }
      }
    `,
  ]

  declare _part: Part

  constructor() {
    super()
    this._part = 'strip'
  }

  override render() {
    const { session } = this
    return html`
      <main>
        <div class="panel head">
          <h2>${linkedText(say('strip.title'))}</h2>
          <tack-choice
            .legend=${say('strip.parts')}
            .options=${parts.map((value) => ({ value, label: say(`strip.part.${value}`) }))}
            .value=${this._part}
            @choose=${(event: ChooseEvent) => (this._part = event.value as Part)}
          ></tack-choice>
          <tack-reading-switch .session=${session}></tack-reading-switch>
        </div>
        ${this.#content()}
      </main>
    `
  }

  #content() {
    const { session } = this
    switch (this._part) {
      case 'strip':
        return html`<tack-patch-strip class="panel" .session=${session}></tack-patch-strip>
          <div class="readings">
            <tack-densitometer class="panel" .session=${session}></tack-densitometer>
            <tack-trap-panel class="panel" .session=${session}></tack-trap-panel>
            <tack-colour-panel class="panel" .session=${session}></tack-colour-panel>
            <tack-spectrum-panel class="panel" .session=${session}></tack-spectrum-panel>
          </div>`
      case 'sheet':
        return html`<tack-sheet-panel class="panel" .session=${session}></tack-sheet-panel>`
      case 'practice':
        return html`<tack-formula-practice class="panel" .session=${session}></tack-formula-practice>`
      case 'shelf':
        return html`<tack-shelf-panel class="panel" .session=${session}></tack-shelf-panel>`
    }
  }
}

customElements.define('tack-strip-view', StripView)
