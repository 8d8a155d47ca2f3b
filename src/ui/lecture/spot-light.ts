/** Over the press line: one unit stays in the light while all else is dimmed. A press on a unit chooses it. */
import type { PropertyDeclarations } from 'lit'
import { css, html, svg } from 'lit'
import type { LineLayout } from '../../view/line-layout.ts'
import { lineLayout } from '../../view/line-layout.ts'
import { benchPicture } from '../bench-picture.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { UnitLight } from './unit-light.ts'
import { lightHolds, unitLight } from './unit-light.ts'

export class SpotEvent extends Event {
  /** from 0 */
  readonly unit: number

  constructor(unit: number) {
    super('spot', { bubbles: true, composed: true })
    this.unit = unit
  }
}

export class SpotLight extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    spot: { attribute: false },
    magnified: { attribute: false },
    size: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        position: absolute;
        inset: 0;
      }
      svg {
        display: block;
        width: 100%;
        height: 100%;
      }
      .dark {
        fill: var(--panel);
        fill-opacity: 0.86;
      }
      .edge {
        fill: none;
        stroke: var(--accent);
        stroke-width: 3;
      }
    `,
  ]

  /** unit in the light, from 0; null: all */
  declare spot: number | null
  declare magnified: number
  /** px of the picture below */
  declare size: { width: number; height: number }

  override render() {
    const { width, height } = this.size
    return html`<svg viewBox="0 0 ${width} ${height}" aria-hidden="true" @click=${this.#choose}>
      ${this.spot === null ? null : this.#dim(this.spot)}
    </svg>`
  }

  #dim(spot: number) {
    const { width, height } = this.size
    const { magnified } = this
    const { above, below, bed } = this.#lightOn(spot)
    const inset = 2
    const [left, right] = inWindow(above)
    const [leftBelow, rightBelow] = inWindow(below)
    const floor = height - inset
    const edge = `M${left} ${inset}H${right}V${magnified * bed}H${rightBelow}V${floor}H${leftBelow}V${magnified * bed}H${left}Z`
    return svg`<path class="dark" fill-rule="evenodd" d="M0 0H${width}V${height}H0Z${edge}" />
      <path class="edge" d=${edge} />`

    function inWindow(extent: UnitLight['above']): number[] {
      return extent.map((x) => Math.min(width - inset, Math.max(inset, magnified * x)))
    }
  }

  #lightOn(unit: number): UnitLight {
    return unitLight(this.#layout, unit, benchPicture(this.session).words.units[unit])
  }

  get #layout(): LineLayout {
    const { width, height } = this.size
    const { magnified } = this
    return lineLayout(
      { width: width / magnified, height: height / magnified },
      benchPicture(this.session).words.units,
      false,
    )
  }

  #choose(event: MouseEvent): void {
    const { left, top } = this.getBoundingClientRect()
    const x = (event.clientX - left) / this.magnified
    const y = (event.clientY - top) / this.magnified
    const unit = this.session.setUp.inks.findIndex((_, each) => lightHolds(this.#lightOn(each), x, y))
    if (unit >= 0) this.dispatchEvent(new SpotEvent(unit))
  }
}

customElements.define('tack-spot-light', SpotLight)
