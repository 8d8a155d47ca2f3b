/** How much light of each wavelength the patch turns back, beside what it is made of, and where the filter looks. */
import { css, html, nothing, svg } from 'lit'
import type { DensityFilter } from '../../colour/data/density-weights.ts'
import { densityWeights } from '../../colour/data/density-weights.ts'
import { wavelengths } from '../../colour/data/wavelengths.ts'
import type { Spectrum } from '../../colour/spectrum.ts'
import { trapAt } from '../../measure/patch-trap.ts'
import { isRefused } from '../../measure/said.ts'
import { readPatch } from '../../measure/strip.ts'
import { patchOf } from '../../press/patches.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { patchWords, told } from './told.ts'

interface Curve {
  readonly name: string
  readonly line: 'patch' | 'alone' | 'below' | 'paper'
  readonly reflectance: Spectrum
}

/** The drawing, in its own units: room for the numbers at the left and below. */
const left = 34
const right = 352
const top = 8
const bottom = 180

const first = wavelengths[0]
const last = wavelengths[wavelengths.length - 1]

function x(nm: number): number {
  return left + ((nm - first) / (last - first)) * (right - left)
}

function y(share: number): number {
  return bottom - share * (bottom - top)
}

export class SpectrumPanel extends StripElement {
  static override styles = [
    sharedStyles,
    tableStyles,
    stripStyles,
    css`
      svg {
        display: block;
        width: 100%;
        max-width: 36rem;
        height: auto;
        margin-top: 8px;
      }
      text {
        fill: var(--soft);
        font-size: 11px;
      }
      .grid {
        stroke: var(--line);
      }
      .filter {
        fill: var(--line);
        fill-opacity: 0.6;
        stroke: var(--edge);
      }
      polyline,
      .key line {
        fill: none;
        stroke: var(--graphite);
        stroke-width: 1.5;
      }
      .patch {
        stroke-width: 3;
      }
      .alone {
        stroke-dasharray: 8 4;
      }
      .below {
        stroke-dasharray: 2 3;
      }
      .paper {
        stroke-width: 1;
        stroke-dasharray: 12 3 2 3;
      }
      .key {
        display: flex;
        flex-wrap: wrap;
        gap: 0 16px;
        font-size: 0.875rem;
      }
      .key svg {
        display: inline-block;
        width: 2.5rem;
        height: 8px;
        margin-block: 0 2px;
        margin-inline: 0 4px;
      }
      .key rect {
        height: 8px;
        width: 2.5rem;
      }
    `,
  ]

  override render() {
    const { strip, patch } = this
    const { colour } = readPatch(strip, patch)
    if (isRefused(colour)) {
      return html`<h2>${say('strip.spectrum')}</h2>
        <p class="mark">${linkedText(told(colour.refused))}</p>`
    }
    const curves = this.#curves(colour.reflectance)
    const { status } = this.desk.state
    const filter = this.desk.state.filter ?? trapAt(strip, patch, status)?.filter ?? null
    return html`
      <h2>${say('strip.spectrum')}</h2>
      <svg
        viewBox="0 0 360 212"
        role="img"
        aria-label=${say('strip.spectrumOf', { name: curves[0].name })}
        aria-describedby="about"
      >
        ${filter === null ? nothing : this.#filter(densityWeights[status][filter])}
        ${[0, 0.25, 0.5, 0.75, 1].map(
          (share) =>
            svg`<line class="grid" x1=${left} x2=${right} y1=${y(share)} y2=${y(share)}></line>
              <text x=${left - 4} y=${y(share) + 4} text-anchor="end">${100 * share}</text>`,
        )}
        ${[400, 500, 600, 700].map((nm) => svg`<text x=${x(nm)} y=${bottom + 14} text-anchor="middle">${nm}</text>`)}
        <text x=${(left + right) / 2} y="208" text-anchor="middle">${say('strip.wavelength')}</text>
        ${curves
          .toReversed()
          .map(
            ({ line, reflectance }) =>
              svg`<polyline class=${line} points=${wavelengths.map((nm, band) => `${x(nm)},${y(reflectance[band])}`).join(' ')}></polyline>`,
          )}
      </svg>
      <ul class="key">
        ${curves.map(
          ({ name, line }) =>
            html`<li>
              <svg viewBox="0 0 40 8" aria-hidden="true"><line class=${line} x2="40" y1="4" y2="4"></line></svg>${name}
            </li>`,
        )}
        ${filter === null ? nothing : this.#filterKey(filter)}
      </ul>
      <p class="note" id="about">${say('strip.spectrumNote', { set: strip.optics.dataSet })}</p>
      <details>
        <summary>${say('strip.spectrumTable')}</summary>
        <div class="scroll" tabindex="0" role="region" aria-label=${say('strip.spectrumTable')}>
          ${this.#table(curves)}
        </div>
      </details>
    `
  }

  /** The patch, and where inks lie on one another, each side of the pair; the bare paper last. */
  #curves(reflectance: Spectrum): Curve[] {
    const { strip, patch, inkNames } = this
    const { units } = readPatch(strip, patch)
    const curve = (line: Curve['line'], of: readonly number[]): Curve[] => {
      const { colour } = readPatch(strip, patchOf(of))
      return isRefused(colour) ? [] : [{ name: patchWords(of, inkNames), line, reflectance: colour.reflectance }]
    }
    return [
      { name: patchWords(units, inkNames), line: 'patch', reflectance },
      ...(units.length > 1 ? [...curve('alone', units.slice(-1)), ...curve('below', units.slice(0, -1))] : []),
      ...(units.length > 0 ? curve('paper', []) : []),
    ]
  }

  #filter(weights: Spectrum) {
    const most = Math.max(...weights)
    const points = weights.map((weight, band) => `${x(wavelengths[band])},${y(weight / most)}`)
    return svg`<polygon class="filter" points="${left},${bottom} ${points.join(' ')} ${right},${bottom}"></polygon>`
  }

  #filterKey(filter: DensityFilter) {
    return html`<li>
      <svg viewBox="0 0 40 8" aria-hidden="true"><rect class="filter"></rect></svg
      >${say('strip.filterLooks', { filter })}
    </li>`
  }

  #table(curves: readonly Curve[]) {
    return html`<table>
      <thead>
        <tr>
          <th scope="col">${say('strip.wavelength')}</th>
          ${curves.map(({ name }) => html`<th scope="col">${say('strip.reflectanceOf', { name })}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${wavelengths.map(
          (nm, band) =>
            html`<tr>
              <th scope="row">${nm}</th>
              ${curves.map(({ reflectance }) => html`<td>${sayNumber(100 * reflectance[band], 1)}</td>`)}
            </tr>`,
        )}
      </tbody>
    </table>`
  }
}

customElements.define('tack-spectrum-panel', SpectrumPanel)
