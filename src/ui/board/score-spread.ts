/** How scores are spread, lesson by lesson: a line, a box and a stroke each; the numbers stand in the table. */
import { html, svg } from 'lit'
import type { Spread } from '../../class/spread.ts'
import { say, sayNumber } from '../say.ts'

export interface SpreadLine {
  readonly name: string
  readonly score: Spread | null
}

/** In units of the picture: width for 100 %, height of a line. */
const width = 200
const height = 16

export function scoreSpreads(lines: readonly SpreadLine[]) {
  return html`<ul class="spreads">
    ${lines.map(({ name, score }) =>
      score
        ? html`<li>
            <span>${name}</span>
            <svg viewBox="-2 0 ${width + 4} ${height}" role="img" aria-label=${spreadWords(score)}>
              ${spread(score)}
            </svg>
          </li>`
        : '',
    )}
  </ul>`
}

function spread({ least, lower, middle, upper, most }: Spread) {
  const at = (share: number) => share * width
  return svg`
    <path class="scale" d="M0 ${height - 0.5}H${width}"></path>
    <path d="M${at(least)} ${height / 2}H${at(most)}"></path>
    <rect x=${at(lower)} y="3" width=${Math.max(1, at(upper) - at(lower))} height=${height - 6}></rect>
    <path class="middle" d="M${at(middle)} 1V${height - 1}"></path>
  `
}

function spreadWords({ least, lower, middle, upper, most }: Spread): string {
  const percent = (share: number) => sayNumber(100 * share, 0)
  return say('board.spreadWords', {
    least: percent(least),
    lower: percent(lower),
    middle: percent(middle),
    upper: percent(upper),
    most: percent(most),
  })
}
