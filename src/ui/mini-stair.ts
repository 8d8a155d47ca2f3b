/** An order as a small stair: every ink a tread at the height of its tack, first unit at the left. */
import { css, svg } from 'lit'

export interface MiniTread {
  letter: string
  /** tack units */
  tack: number
  /** #rrggbb */
  colour: string
}

/** px where text has its usual size */
const wide = 26
const high = 46
const letterRoom = 16

export const miniStairStyles = css`
  .stair {
    display: block;
    flex: none;
    font-size: 13px;
    font-weight: 650;
    text-anchor: middle;
    fill: var(--graphite);
  }
  .stair .tread {
    fill: var(--field);
    stroke: var(--edge);
  }
  rect.ink {
    stroke: var(--edge);
  }
`

/** Drawn for the eye alone: the names stand beside it. */
export function miniStair(treads: readonly MiniTread[]) {
  const highest = Math.max(...treads.map(({ tack }) => tack))
  return svg`<svg class="stair" width="${(wide * treads.length + 2) / 16}rem" height="${high / 16}rem" viewBox="0 0 ${wide * treads.length + 2} ${high}" aria-hidden="true">
    ${treads.map(({ letter, tack, colour }, place) => {
      const height = letterRoom + (high - letterRoom - 1) * (tack / highest)
      const [x, y] = [1 + place * wide, high - height]
      return svg`<rect class="tread" x=${x} y=${y} width=${wide} height=${height}></rect>
        <rect class="ink" x=${x + 1} y=${y + 1} width=${wide - 2} height="6" fill=${colour}></rect>
        <text x=${x + wide / 2} y=${high - 4}>${letter}</text>`
    })}
  </svg>`
}
