/** A row of marks: how many presses a scene has, and how many of them have been made. */
import { LitElement, css, html, nothing } from 'lit'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'

export class PressMarks extends LitElement {
  static override properties = { made: { type: Number }, count: { type: Number } }
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: inline-block;
      }
      span.row {
        display: inline-flex;
        gap: 0.35em;
        align-items: center;
        vertical-align: middle;
      }
      svg {
        width: 0.9em;
        height: 0.9em;
      }
      circle {
        fill: none;
        stroke: currentcolor;
        stroke-width: 2;
      }
      .made {
        fill: currentcolor;
      }
    `,
  ]

  declare made: number
  declare count: number

  override render() {
    const { made, count } = this
    return html`<span class="unseen">${say('lecture.pressesSaid', { made, count })}</span> ${
        count === 0
          ? nothing
          : html`<span class="row" aria-hidden="true"
              >${Array.from(
                { length: count },
                (_, press) =>
                  html`<svg viewBox="0 0 16 16">
                    <circle class=${press < made ? 'made' : ''} cx="8" cy="8" r="6" />
                  </svg>`,
              )}</span
            >`
      }`
  }
}

customElements.define('tack-press-marks', PressMarks)
