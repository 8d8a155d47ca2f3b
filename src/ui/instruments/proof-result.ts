/** One proof as weighed: what the balance showed, the ratio it gives, and what the model knows besides. */
import { LitElement, css, html, nothing, svg } from 'lit'
import { average, repeatability } from '../../physics/repeatability.ts'
import type { Proof, ProofFilms, Weighings } from '../../press/proof.ts'
import { massTrapOf, printProof, weighProof } from '../../press/proof.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { tableStyles } from '../table-styles.ts'
import { rigStyles } from './rig-styles.ts'

export interface PrintedProof {
  readonly proof: Proof
  readonly films: ProofFilms
  readonly weighings: readonly Weighings[]
  /** the result in one sentence */
  readonly words: string
}

/** Weighings that can be averaged: as many as readings anywhere else. */
const mostWeighings = 16

/** Prints a proof and weighs it once, with the noise of the `index`-th weighing. */
export function printed(proof: Proof, seed: number, index: number): PrintedProof {
  return weighedOnce({ proof, films: printProof(proof), weighings: [], words: '' }, seed, index)
}

export function weighedOnce(result: PrintedProof, seed: number, index: number): PrintedProof {
  if (result.weighings.length >= mostWeighings) return result
  const weighings = [...result.weighings, weighProof(result.films, seed, index)]
  const [first, second] = result.proof.inks.map(({ name }) => name)
  return {
    ...result,
    weighings,
    words: say('rig.proof.weighed', { first, second, ratio: meanWeights(weighings).ratio }),
  }
}

/** mg, each the mean over all weighings; the ratio is that of the means. */
function meanWeights(weighings: readonly Weighings[]) {
  const mean = (pick: (each: Weighings) => number) => average(weighings.map(pick), repeatability.weighing).mean
  const strip = [0, 1, 2].map((at) => mean((each) => each.strip[at]))
  const dry = [0, 1].map((at) => mean((each) => each.dry[at]))
  const [onWet, onDry] = [strip[2] - strip[1], dry[1] - dry[0]]
  return { strip, dry, onWet, onDry, ratio: onWet / onDry }
}

/** px of the drawing for a um of film */
const perUm = 24

export class ProofResult extends LitElement {
  static override properties = { result: { attribute: false }, stale: { type: Boolean }, colours: { attribute: false } }
  static override styles = [
    sharedStyles,
    tableStyles,
    rigStyles,
    css`
      svg {
        display: block;
        width: 100%;
        max-width: 26.25rem;
        height: auto;
        margin: 8px 0;
        background: var(--paper);
        forced-color-adjust: none;
      }
      rect {
        stroke: #2a2927;
        stroke-width: 0.75;
      }
      .paper {
        fill: #fdfcfa;
        stroke: #857e72;
      }
      text {
        fill: #4c4943;
        font-size: 13px;
        text-anchor: middle;
      }
    `,
  ]

  declare result: PrintedProof
  declare stale: boolean
  /** #rrggbb of each of the two inks */
  declare colours: readonly string[]

  override render() {
    const { proof, films, weighings } = this.result
    const [first, second] = proof.inks.map(({ name }) => name)
    const { strip, dry, onWet, onDry, ratio } = meanWeights(weighings)
    const lifted = Math.max(0, 1 - films.firstAfter / films.first)
    return html`
      <h3>${say('rig.proof.order', { first, second })}</h3>
      ${this.stale ? html`<p class="note">${say('rig.proof.stale')}</p>` : nothing}
      <table>
        <thead>
          <tr>
            <td></td>
            <th scope="col">${say('rig.proof.before')}</th>
            <th scope="col">${say('rig.proof.after.first', { ink: first })}</th>
            <th scope="col">${say('rig.proof.after.first', { ink: second })}</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">${say('rig.proof.strip')}</th>
            ${strip.map((weight) => html`<td>${sayNumber(weight, 1)}</td>`)}
          </tr>
          <tr>
            <th scope="row">${say('rig.proof.dry')}</th>
            <td>${sayNumber(dry[0], 1)}</td>
            <td></td>
            <td>${sayNumber(dry[1], 1)}</td>
          </tr>
        </tbody>
      </table>
      <p>${say('proof.ratio', { wet: onWet, dry: onDry, ratio })}</p>
      <details>
        <summary>${say('rig.proof.inside')}</summary>
        ${this.#picture(films, first, second)}
        <p>${say('rig.proof.own', { trap: massTrapOf(films) })}</p>
        <p>${say('rig.proof.lifted', { share: lifted, before: films.first, after: films.firstAfter })}</p>
      </details>
    `
  }

  /** The films on the strip to scale with one another: after the first ink, after both, and the second alone. */
  #picture(films: ProofFilms, first: string, second: string) {
    const [one, other] = this.colours
    const base = 96
    const column = (x: number, layers: readonly (readonly [number, string])[], words: string) => {
      let y = base
      const bars = layers.map(([film, colour]) => {
        y -= film * perUm
        return svg`<rect x=${x} y=${y} width="96" height=${film * perUm} fill=${colour}></rect>`
      })
      return svg`${bars}<rect class="paper" x=${x} y=${base} width="96" height="8"></rect>
        <text x=${x + 48} y=${base + 24}>${words}</text>`
    }
    const words = say('rig.proof.films', {
      first,
      second,
      one: films.firstAfter,
      two: films.secondAfter,
      alone: films.secondAlone,
    })
    return html`<svg viewBox="0 0 420 124" role="img" aria-label=${words}>
        ${column(20, [[films.first, one]], say('rig.proof.after.first', { ink: first }))}
        ${column(
          160,
          [
            [films.firstAfter, one],
            [films.secondAfter, other],
          ],
          say('rig.proof.after.first', { ink: second }),
        )}
        ${column(300, [[films.secondAlone, other]], say('rig.proof.alone', { ink: second }))}
      </svg>
      <p>${words}</p>`
  }
}

customElements.define('tack-proof-result', ProofResult)
