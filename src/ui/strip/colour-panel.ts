/** The colour of the patch under the head, and how far it is from a published aim. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import type { InkSetData } from '../../colour/ink-set.ts'
import { aimsNamed } from '../../colour/published-aim.ts'
import { screenColour } from '../../colour/screen-colour.ts'
import type { HueArrow } from '../../measure/hue-arrow.ts'
import { aimNames, arrowToAim } from '../../measure/hue-arrow.ts'
import { isRefused } from '../../measure/said.ts'
import { readPatch } from '../../measure/strip.ts'
import '../colour-scales.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import './hue-plane.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { told } from './told.ts'

/** The aim that is compared with until another is chosen: a published set for that kind of paper. */
const usualAims: Readonly<Record<InkSetData['name'], string>> = {
  coated: 'FOGRA39L',
  uncoated: 'FOGRA29L',
  newsprint: 'IFRA26S',
}

export class ColourPanel extends StripElement {
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      .swatch {
        height: 4rem;
        border: 1px solid var(--edge);
        background: var(--patch);
        forced-color-adjust: none;
      }
      select {
        max-width: 100%;
      }
      .swatches {
        display: grid;
        grid-auto-columns: minmax(0, 1fr);
        grid-auto-flow: column;
        margin: 8px 0;
      }
      figure {
        margin: 0;
      }
      figcaption {
        font-size: 0.875rem;
      }
      .row {
        align-items: baseline;
      }
      tack-hue-plane {
        max-width: 20rem;
        margin-top: 8px;
      }
    `,
  ]

  override render() {
    const read = readPatch(this.strip, this.patch)
    const { colour } = read
    if (isRefused(colour)) {
      return html`<h2>${say('strip.colour')}</h2>
        <p class="mark">${linkedText(told(colour.refused))}</p>`
    }
    const aim = this.desk.state.aim ?? usualAims[this.strip.optics.name]
    const arrow = arrowToAim(this.strip, read, aim)
    return html`
      <h2>${say('strip.colour')}</h2>
      <div class="swatches">
        <figure>
          <div class="swatch" data-colour=${colour.screen.hex}></div>
          <figcaption>${say('strip.printed')}</figcaption>
        </figure>
        ${
          isRefused(arrow)
            ? nothing
            : html`<figure>
                <div class="swatch" data-colour=${screenColour(arrow.aim).hex}></div>
                <figcaption>${say('strip.wanted', { set: arrow.set })}</figcaption>
              </figure>`
        }
      </div>
      ${
        colour.screen.outsideScreen
          ? html`<p class="mark">
              ${linkedText(say('strip.outsideScreen', { difference: sayNumber(colour.screen.difference, 1) }))}
            </p>`
          : nothing
      }
      <div class="row">
        <label for="aim">${say('strip.aim')}</label>
        <select id="aim" @change=${this.#choose}>
          ${aimNames.map((name) => html`<option value=${name} ?selected=${name === aim}>${name}</option>`)}
        </select>
      </div>
      ${isRefused(arrow) ? html`<p class="mark">${linkedText(told(arrow.refused))}</p>` : nothing}
      <div class="scroll">${this.#table(colour.Lab, isRefused(arrow) ? null : arrow)}</div>
      <tack-colour-scales></tack-colour-scales>
      ${isRefused(arrow) ? nothing : this.#arrow(arrow)}
      <p class="note">${linkedText(say('strip.aimNote', { condition: aimsNamed(aim)?.printCondition ?? '' }))}</p>
    `
  }

  #table(Lab: readonly number[], arrow: HueArrow | null) {
    const row = (name: string, values: readonly number[]) =>
      html`<tr>
        <th scope="row">${name}</th>
        ${values.map((value) => html`<td>${sayNumber(value, 1)}</td>`)}
      </tr>`
    return html`<table>
      <caption>
        ${say('strip.labTable')}
      </caption>
      <thead>
        <tr>
          <td></td>
          <th scope="col">L*</th>
          <th scope="col">a*</th>
          <th scope="col">b*</th>
        </tr>
      </thead>
      <tbody>
        ${row(say('strip.thisPatch'), Lab)} ${arrow ? row(arrow.set, arrow.aim) : nothing}
      </tbody>
    </table>`
  }

  #arrow(arrow: HueArrow) {
    const { difference, hueTurn, chromaChange, lightnessChange } = arrow
    return html`<p class="row">
        <span class="figure">${sayNumber(difference, 1)}</span> <span>${linkedText(say('strip.difference'))}</span>
      </p>
      <p>
        ${
          hueTurn === null
            ? say('strip.hueGrey')
            : say('strip.hueTurn', {
                degrees: sayNumber(Math.abs(hueTurn), 0),
                way: Math.abs(hueTurn) < 0.5 ? 'none' : hueTurn > 0 ? 'on' : 'back',
              })
        }
        ${say('strip.chromaChange', {
          by: sayNumber(Math.abs(chromaChange), 1),
          way: chromaChange < 0 ? 'less' : 'more',
          lightBy: sayNumber(Math.abs(lightnessChange), 1),
          lightWay: lightnessChange < 0 ? 'darker' : 'lighter',
        })}
      </p>
      <tack-hue-plane .arrow=${arrow}></tack-hue-plane>`
  }

  readonly #choose = (event: Event): void => {
    this.desk.set({ aim: (event.target as HTMLSelectElement).value })
  }

  override updated(changed: PropertyValues): void {
    super.updated(changed)
    for (const swatch of this.renderRoot.querySelectorAll<HTMLElement>('.swatch')) {
      swatch.style.setProperty('--patch', swatch.dataset['colour'] ?? '')
    }
  }
}

customElements.define('tack-colour-panel', ColourPanel)
