/** What L*, a* and b* say, to look at: a scale for each, in the colours that it runs through. */
import { LitElement, css, html, svg } from 'lit'
import type { Lab } from '../colour/lab.ts'
import { screenColour } from '../colour/screen-colour.ts'
import { linkedText } from './linked-text.ts'
import { say } from './say.ts'
import { sharedStyles } from './shared-styles.ts'

interface Scale {
  name: string
  ends: readonly [least: 'black' | 'green' | 'blue', most: 'white' | 'red' | 'yellow']
  at: (share: number) => Lab
}

/** Of a* and b*, either way from grey: chosen so that a screen still shows nearly all of it. */
const reach = 50
/** Lightness at which a* and b* are shown: chosen light enough for yellow and dark enough for red. */
const lightness = 65
const across = (share: number) => reach * (2 * share - 1)

const scales: readonly Scale[] = [
  { name: 'L*', ends: ['black', 'white'], at: (share) => [100 * share, 0, 0] },
  { name: 'a*', ends: ['green', 'red'], at: (share) => [lightness, across(share), 0] },
  { name: 'b*', ends: ['blue', 'yellow'], at: (share) => [lightness, 0, across(share)] },
]

/** Fields of a scale: an odd number, so that grey has one of its own. */
const fields = 13
/** Side of a field, px */
const side = 20

export class ColourScales extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: block;
      }
      p {
        margin: 8px 0 4px;
      }
      .scales {
        display: grid;
        grid-template-columns: auto auto minmax(0, 13rem) auto;
        gap: 4px 8px;
        align-items: center;
        justify-content: start;
        font-size: 0.875rem;
        line-height: 1.125rem;
      }
      .least {
        text-align: end;
      }
      svg {
        display: block;
        /* As all pictures, from left to right in every language. */
        direction: ltr;
        width: 100%;
        height: auto;
        border: 1px solid var(--edge);
        forced-color-adjust: none;
      }
    `,
  ]

  override render() {
    return html`<p>${linkedText(say('colour.scales'))}</p>
      <div class="scales">
        ${scales.map(
          ({ name, ends: [least, most], at }) =>
            html`<strong>${name}</strong><span class="least">${say(`colour.scale.${least}`)}</span>
              <svg viewBox="0 0 ${fields * side} ${side}" aria-hidden="true">
                ${Array.from(
                  { length: fields },
                  (_, field) =>
                    svg`<rect class="ink" x=${field * side} width=${side} height=${side} fill=${screenColour(at(field / (fields - 1))).hex}></rect>`,
                )}</svg
              ><span>${say(`colour.scale.${most}`)}</span>`,
        )}
      </div>`
  }
}

customElements.define('tack-colour-scales', ColourScales)
