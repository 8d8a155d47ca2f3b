/** A trap by Preucil on its own scale, against the band the trade calls normal. No other trap is drawn on this scale. */
import { LitElement, css, html, svg } from 'lit'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'

/**
 * Percent of apparent trap (Preucil) that is called normal.
 * Source: Johansson, Lundberg, Ryberg, A Guide to Graphic Print Production.
 */
const normal = { least: 70, most: 87 } as const
/** Percent at the right end of the scale. */
const end = 110

export class NormalBand extends LitElement {
  static override properties = { percent: { type: Number } }
  static override styles = [
    sharedStyles,
    css`
      svg {
        display: block;
        width: 100%;
        max-width: 20rem;
        height: auto;
        font-size: 11px;
      }
      .scale {
        fill: var(--field);
        stroke: var(--edge);
      }
      .normal {
        fill: var(--line);
        stroke: var(--edge);
      }
      .here {
        fill: var(--graphite);
      }
      text {
        fill: var(--soft);
        text-anchor: middle;
      }
      p {
        font-size: 0.875rem;
      }
    `,
  ]

  declare percent: number

  override render() {
    const { least, most } = normal
    const place = (percent: number) => 10 + (Math.min(end, Math.max(0, percent)) / end) * 280
    const here = place(this.percent)
    const side = this.percent < least ? 'below' : this.percent > most ? 'above' : 'inside'
    return html`
      <svg viewBox="0 0 300 44" aria-hidden="true">
        <rect class="scale" x="10" y="12" width="280" height="14"></rect>
        <rect class="normal" x=${place(least)} y="12" width=${place(most) - place(least)} height="14"></rect>
        <path class="here" d="M${here} 26 l-6 -22 h12 z"></path>
        ${[0, least, most, 100].map((tick) => svg`<text x=${place(tick)} y="40">${tick}</text>`)}
      </svg>
      <p>${linkedText(say(`strip.band.${side}`, { least, most, percent: sayNumber(this.percent, 0) }))}</p>
    `
  }
}

customElements.define('tack-normal-band', NormalBand)
