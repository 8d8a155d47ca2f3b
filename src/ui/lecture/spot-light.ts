/** Over the press line: one unit stays in the light while all else is dimmed. A press on a unit chooses it. */
import type { PropertyDeclarations } from 'lit'
import { css, html, svg } from 'lit'
import type { LineLayout } from '../../view/line-layout.ts'
import { lineLayout, unitReach } from '../../view/line-layout.ts'
import { benchPicture } from '../bench-picture.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'

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
      path {
        fill: var(--panel);
        fill-opacity: 0.86;
      }
      rect {
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
    const [left, right] = this.#extent(spot)
    const inset = 2
    const hole = `M${left} ${inset}H${right}V${height - inset}H${left}Z`
    return svg`<path fill-rule="evenodd" d="M0 0H${width}V${height}H0Z${hole}" />
      <rect x=${left} y=${inset} width=${right - left} height=${height - 2 * inset} />`
  }

  /** px from the left between which a unit stands. */
  #extent(unit: number): [number, number] {
    const layout = this.#layout
    const { magnified } = this
    const nip = layout.first + unit * layout.spacing
    const { radius, spacing, beside } = layout
    // Where units stand close, not into the cylinders of the one before.
    const from = nip - Math.min((unitReach + 0.1) * radius, spacing - 1.1 * radius)
    const to = beside ? from + spacing : nip + 1.1 * radius
    return [Math.max(2, from * magnified), Math.min(this.size.width - 2, to * magnified)]
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
    const x = event.clientX - this.getBoundingClientRect().left
    const unit = this.session.setUp.inks.findIndex((_, each) => {
      const [from, to] = this.#extent(each)
      return x >= from && x < to
    })
    if (unit >= 0) this.dispatchEvent(new SpotEvent(unit))
  }
}

customElements.define('tack-spot-light', SpotLight)
