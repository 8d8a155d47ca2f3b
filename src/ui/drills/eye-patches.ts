/** The patches as an eye compares them: the good sheet's on the left of each pair, this sheet's on the right. */
import { LitElement, css, html, svg } from 'lit'
import type { Lab } from '../../colour/lab.ts'
import { screenColour } from '../../colour/screen-colour.ts'
import type { Drill } from '../../drill/drill.ts'
import type { Observation } from '../../drill/observe.ts'
import { unitsIn } from '../../press/patches.ts'
import { inkLetters } from '../../session/letters.ts'
import { say } from '../say.ts'
import { patchWords } from '../strip/told.ts'

/** px of one pair and the room around it */
const pair = { width: 76, height: 56, apart: 92, perRow: 4 } as const

export class EyePatches extends LitElement {
  static override properties = { drill: { attribute: false }, observations: { attribute: false } }
  static override styles = css`
    svg {
      display: block;
      /* As all pictures, from left to right in every language. */
      direction: ltr;
      width: 100%;
      max-width: 28.75rem;
      height: auto;
      margin: 8px 0;
      background: var(--paper);
      forced-color-adjust: none;
    }
    /* Round both halves: nothing stands between the two colours that are compared. */
    .pair {
      fill: none;
      stroke: #857e72;
    }
    text {
      fill: #2a2927;
      font-size: 13px;
      text-anchor: middle;
    }
  `

  declare drill: Drill
  declare observations: readonly Observation[]

  override render() {
    const names = this.drill.ticket.inks.map(({ name }) => name)
    const letters = inkLetters(names)
    const pairs = this.#pairs()
    const rows = Math.ceil(pairs.length / pair.perRow)
    const patches = pairs.map(({ patch }) => patchWords(unitsIn(patch, names.length), names)).join('; ')
    return html`<svg
      viewBox="0 0 ${pair.apart * pair.perRow + 8} ${rows * 96 + 8}"
      role="img"
      aria-label=${say('room.eyePicture', { patches })}
    >
      ${pairs.map(({ patch, good, seen }, at) => {
        const x = 8 + (at % pair.perRow) * pair.apart
        const y = 24 + Math.floor(at / pair.perRow) * 96
        const label = unitsIn(patch, names.length)
          .map((unit) => letters[unit])
          .join('')
        return svg`<text x=${x + pair.width / 2} y=${y - 6}>${label}</text>
          <rect x=${x} y=${y} width=${pair.width / 2} height=${pair.height} fill=${screenColour(good).hex}></rect>
          <rect x=${x + pair.width / 2} y=${y} width=${pair.width / 2} height=${pair.height} fill=${screenColour(seen).hex}></rect>
          <rect class="pair" x=${x} y=${y} width=${pair.width} height=${pair.height}></rect>
          <text x=${x + pair.width / 4} y=${y + pair.height + 13}>${say('room.goodSheet')}</text>
          <text x=${x + (3 * pair.width) / 4} y=${y + pair.height + 13}>${say('room.thisSheet')}</text>`
      })}
    </svg>`
  }

  /** L*, a* and b* of a patch stand side by side. */
  #pairs(): { patch: number; good: Lab; seen: Lab }[] {
    const { observations } = this
    return observations.flatMap(({ quantity: { name, patch = 0 } }, at) => {
      if (name !== 'lightness') return []
      const [L, a, b] = observations.slice(at, at + 3)
      return [{ patch, good: [L.good, a.good, b.good] as const, seen: [L.value, a.value, b.value] as const }]
    })
  }
}

customElements.define('tack-eye-patches', EyePatches)
