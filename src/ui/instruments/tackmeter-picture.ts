/** The rotary tackmeter drawn: three rollers with ink on them, and the needle that the measuring roller's arm moves. */
import { LitElement, css, html, svg } from 'lit'
import type { Tackmeter } from '../../physics/tackmeter.ts'
import { readingOfTack } from '../../physics/tackmeter.ts'
import type { TackmeterState } from '../../physics/tackmeter-run.ts'
import { filmNow } from '../../physics/tackmeter-run.ts'
import { say, sayNumber } from '../say.ts'
import { roundTicks } from './line-plot.ts'

/** px of the drawing for a mm of roller */
const perMm = 1.25
/** px of drawn film for a um: films would not be seen at the rollers' own scale */
const perUm = 0.5
/** Tack units whose standard reading stands near the end of the scale. */
const scaleTack = 32
/** Degrees that the needle sweeps, to either side of upright. */
const sweep = 75

const main = { x: 130, y: 152 }
/** The dial; it stands clear of the measuring roller and all the ink on it. */
const gauge = { y: 150, radius: 96, apart: 28 }

export class TackmeterPicture extends LitElement {
  static override properties = {
    instrument: { attribute: false },
    state: { attribute: false },
    turned: { type: Number },
    colour: {},
  }
  static override styles = css`
    svg {
      display: block;
      /* As all pictures, from left to right in every language. */
      direction: ltr;
      width: 100%;
      max-width: 35rem;
      height: auto;
    }
    .roller {
      fill: var(--field);
      stroke: var(--edge);
      stroke-width: 2;
    }
    .spoke {
      stroke: var(--edge);
      stroke-width: 2;
    }
    .film {
      fill: none;
    }
    .outline {
      fill: none;
      stroke: var(--graphite);
      stroke-width: 0.75;
    }
    .arm {
      fill: none;
      stroke: var(--soft);
      stroke-width: 2;
      stroke-dasharray: 6 3;
    }
    .scale {
      fill: none;
      stroke: var(--edge);
      stroke-width: 1.5;
    }
    .needle {
      stroke: var(--graphite);
      stroke-width: 3;
      stroke-linecap: round;
    }
    .hub {
      fill: var(--graphite);
    }
    text {
      fill: var(--soft);
      font-size: 12px;
      text-anchor: middle;
    }
  `

  declare instrument: Tackmeter
  declare state: TackmeterState | null
  /** turns of the main roller as drawn */
  declare turned: number
  /** #rrggbb of the ink */
  declare colour: string

  override render() {
    const [driven, spreading, measuring] = this.instrument.rollers.map(({ diameter }) => (diameter * perMm) / 2)
    const beside = (radius: number, side: -1 | 1) => {
      const apart = driven + radius
      return { x: main.x + side * apart * 0.62, y: main.y - apart * Math.sqrt(1 - 0.62 ** 2) }
    }
    const left = beside(spreading, -1)
    const right = beside(measuring, 1)
    const dial = right.x + measuring + gauge.apart + gauge.radius
    return html`<svg
      viewBox="0 0 ${Math.ceil(dial + gauge.radius + 12)} 226"
      role="img"
      aria-label=${say('rig.picture')}
    >
      <path class="arm" d="M${right.x} ${right.y} Q${right.x + measuring} ${gauge.y} ${dial} ${gauge.y}"></path>
      ${this.#roller(main, driven, this.turned, say('rig.driven'))}
      ${this.#roller(left, spreading, (-this.turned * driven) / spreading, say('rig.spreading'))}
      ${this.#roller(right, measuring, (-this.turned * driven) / measuring, say('rig.measuring'))} ${this.#gauge(dial)}
    </svg>`
  }

  #roller({ x, y }: { x: number; y: number }, radius: number, turns: number, name: string) {
    const { state } = this
    const film = state ? Math.max(1, filmNow(this.instrument, state) * perUm) : 0
    const outer = radius - 1 + film / 2
    // Unevenly spread ink lies in patches; they close up as it spreads.
    const around = 2 * Math.PI * outer
    const patch = around / 6
    const covered = 0.3 + 0.7 * (state?.spread ?? 0)
    return svg`<g transform="rotate(${(360 * turns) % 360} ${x} ${y})">
        <circle class="roller" cx=${x} cy=${y} r=${radius - 2}></circle>
        ${[0, 120, 240].map(
          (angle) =>
            svg`<line class="spoke" transform="rotate(${angle} ${x} ${y})" x1=${x} x2=${x} y1=${y - radius * 0.55} y2=${y - radius + 3}></line>`,
        )}
        ${
          state
            ? svg`<circle class="film" stroke=${this.colour} cx=${x} cy=${y} r=${outer} stroke-width=${film}
                stroke-dasharray=${covered > 0.98 ? 'none' : `${patch * covered} ${patch * (1 - covered)}`}></circle>`
            : null
        }
      </g>
      <circle class="outline" cx=${x} cy=${y} r=${radius - 1 + film}></circle>
      <text x=${x} y=${y + 4}>${name}</text>`
  }

  #gauge(x: number) {
    const least = this.instrument.offset
    const ticks = roundTicks(least, readingOfTack(this.instrument, scaleTack))
    const most = ticks[ticks.length - 1]
    const angle = (reading: number) => {
      const share = (reading - ticks[0]) / (most - ticks[0])
      return -sweep + 2 * sweep * Math.min(1.04, Math.max(-0.02, share))
    }
    const at = (degrees: number, radius: number) => {
      const radians = (degrees * Math.PI) / 180
      return { x: x + radius * Math.sin(radians), y: gauge.y - radius * Math.cos(radians) }
    }
    const [from, to] = [at(-sweep, gauge.radius), at(sweep, gauge.radius)]
    const tip = at(angle(this.state?.needle ?? least), gauge.radius - 6)
    return svg`<path class="scale" d="M${from.x} ${from.y} A${gauge.radius} ${gauge.radius} 0 0 1 ${to.x} ${to.y}"></path>
      ${ticks.map((tick) => {
        const [inner, outer, words] = [-8, 0, -20].map((step) => at(angle(tick), gauge.radius + step))
        return svg`<line class="scale" x1=${inner.x} y1=${inner.y} x2=${outer.x} y2=${outer.y}></line>
          <text x=${words.x} y=${words.y + 4}>${sayNumber(tick, 0)}</text>`
      })}
      <line class="needle" x1=${x} y1=${gauge.y} x2=${tip.x} y2=${tip.y}></line>
      <circle class="hub" cx=${x} cy=${gauge.y} r="6"></circle>
      <text x=${x} y=${gauge.y + 26}>${say(`rig.instrument.${this.instrument.id}`)}</text>`
  }
}

customElements.define('tack-tackmeter-picture', TackmeterPicture)
