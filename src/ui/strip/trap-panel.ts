/** Trap at the patch under the head: by mass, and by three equations as the densitometer sees it, with the numbers in them. */
import { css, html, nothing } from 'lit'
import type { PatchTrap } from '../../measure/patch-trap.ts'
import { trapAt } from '../../measure/patch-trap.ts'
import type { Said } from '../../measure/said.ts'
import { isRefused } from '../../measure/said.ts'
import { readPatch } from '../../measure/strip.ts'
import type { TrapDensities, TrapEquation } from '../../measure/trap-equations.ts'
import { apparentTrap, trapEquations } from '../../measure/trap-equations.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import './normal-band.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { patchWords, told } from './told.ts'
import './trap-formula.ts'

export class TrapPanel extends StripElement {
  static override styles = [
    sharedStyles,
    stripStyles,
    css`
      .densities {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 24px;
        margin: 8px 0;
      }
      dt {
        font-size: 0.875rem;
      }
      .traps {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, max(15.625rem, 40%)), 1fr));
        gap: 8px 24px;
        margin-top: 8px;
      }
      .why {
        grid-column: 1 / -1;
      }
      section {
        padding-top: 4px;
        border-top: 1px solid var(--line);
      }
    `,
  ]

  override render() {
    const { strip, patch, inkNames } = this
    const { status, filter } = this.desk.state
    const trap = trapAt(strip, patch, status, filter ?? undefined)
    if (!trap)
      return html`<h2>${say('strip.trap')}</h2>
        <p>${linkedText(say('strip.noTrapHere'))}</p>`
    const later = inkNames[trap.later]
    const below = patchWords(trap.below, inkNames)
    return html`
      <h2>${say('strip.trapOf', { later, below })}</h2>
      ${trap.densities && trap.filter ? this.#densities(trap, trap.densities, trap.filter) : nothing}
      <div class="traps">${this.#mass(trap)} ${this.#apparent(trap)}</div>
    `
  }

  #densities(trap: PatchTrap, densities: TrapDensities, filter: 'red' | 'green' | 'blue') {
    const { inkNames } = this
    const names = { D1: patchWords(trap.below, inkNames), D2: inkNames[trap.later], D3: say('strip.both') }
    const right = trap.rightFilter && !trap.caution ? trap.rightFilter.because : null
    return html`<p class=${trap.caution ? 'mark' : ''}>
        ${trap.caution ? linkedText(told(trap.caution)) : right ? linkedText(told(right)) : nothing}
      </p>
      <dl class="densities" aria-label=${say('strip.densitiesThrough', { filter, status: trap.status })}>
        ${(['D1', 'D2', 'D3'] as const).map(
          (symbol) =>
            html`<div>
              <dt><i>${symbol}</i> ${names[symbol]}</dt>
              <dd class="figure">${sayNumber(densities[symbol], 2)}</dd>
            </div>`,
        )}
      </dl>
      <p class="note">${say('strip.densitiesThrough', { filter, status: trap.status })}</p>`
  }

  #mass({ massTrap, later }: PatchTrap) {
    const { strip, patch } = this
    const onWet = readPatch(strip, patch).films[later]
    const onBare = strip.sheet.onBare[later]
    return html`<section>
      <h3>${linkedText(say('strip.massTrap'))}</h3>
      ${
        massTrap === null
          ? html`<p>${linkedText(say('trap.nothingOnBare'))}</p>`
          : html`<p class="figure">${sayNumber(100 * massTrap, 1)} <small>%</small></p>
              <tack-trap-formula .films=${{ onWet, onBare }} .percent=${100 * massTrap}></tack-trap-formula>
              <p class="note">${say('strip.massNote')}</p>`
      }
    </section>`
  }

  #apparent({ apparent, densities, massTrap, why }: PatchTrap) {
    if (isRefused(apparent) || !densities) {
      return html`<section>
        <h3>${linkedText(say('strip.apparentTrap'))}</h3>
        ${isRefused(apparent) ? html`<p>${linkedText(told(apparent.refused))}</p>` : nothing}
        ${massTrap === null ? nothing : html`<p>${say('strip.massBeside')}</p>`}
      </section>`
    }
    return trapEquations.map((equation) => [
      this.#equation(equation, apparent.percent[equation], densities),
      equation === 'preucil' && why ? this.#why(why) : nothing,
    ])
  }

  #why(why: Said) {
    return html`<section class="why">
      <h3>${say('strip.why')}</h3>
      <p>${linkedText(told(why))}</p>
    </section>`
  }

  #equation(equation: TrapEquation, percent: number, densities: TrapDensities) {
    const none = apparentTrap(equation, { ...densities, D3: densities.D1 })
    return html`<section>
      <h3>${linkedText(say(`strip.by.${equation}`))}</h3>
      <p class="figure">${sayNumber(percent, 1)} <small>%</small></p>
      ${equation === 'preucil' ? html`<tack-normal-band .percent=${percent}></tack-normal-band>` : nothing}
      <tack-trap-formula .equation=${equation} .densities=${densities} .percent=${percent}></tack-trap-formula>
      ${
        equation === 'preucil' || isRefused(none)
          ? nothing
          : html`<p class="note">${say('strip.ownScale', { none: Math.round(none.percent) })}</p>`
      }
    </section>`
  }
}

customElements.define('tack-trap-panel', TrapPanel)
