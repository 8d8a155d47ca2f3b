/** One trap equation typeset twice: with its symbols, and with the present numbers in their place. */
import { LitElement, css, html } from 'lit'
import type { TrapDensities, TrapEquation } from '../../measure/trap-equations.ts'
import '../formula.ts'
import { sayNumber } from '../say.ts'

export class TrapFormula extends LitElement {
  static override properties = {
    equation: {},
    densities: { attribute: false },
    films: { attribute: false },
    percent: { type: Number },
    _tex: { state: true },
  }

  static override styles = css`
    tack-formula {
      font-size: 0.9375rem;
    }
  `

  declare equation: TrapEquation | undefined
  declare densities: TrapDensities | undefined
  /** um; given in place of an equation's densities for mass trap */
  declare films: { onWet: number; onBare: number } | undefined
  declare percent: number
  declare _tex: { symbols: string; values: string } | undefined

  override willUpdate(changed: Map<string, unknown>): void {
    if (!changed.has('_tex')) void this.#work()
  }

  /** The equations come with an algebra library, which is fetched when the first one is shown. */
  async #work(): Promise<void> {
    const { massTrapTex, trapTex } = await import('../../measure/trap-formula.ts')
    const { equation, densities, films } = this
    const tex =
      equation && densities ? trapTex(equation, densities) : films ? massTrapTex(films.onWet, films.onBare) : undefined
    if (tex?.values !== this._tex?.values) this._tex = tex
  }

  override render() {
    if (!this._tex) return html`<div aria-busy="true"></div>`
    const { symbols, values } = this._tex
    return html`<tack-formula .tex=${symbols}></tack-formula>
      <tack-formula .tex=${String.raw`${values} = ${sayNumber(this.percent, 1)}\,\%`}></tack-formula>`
  }
}

customElements.define('tack-trap-formula', TrapFormula)
