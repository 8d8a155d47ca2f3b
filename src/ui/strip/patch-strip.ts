/** The strip drawn: a button for each patch in its computed colour; the densitometer's head lies on one of them. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import { isRefused } from '../../measure/said.ts'
import { readPatch } from '../../measure/strip.ts'
import { trapAt } from '../../measure/patch-trap.ts'
import { inkLetters } from '../../session/letters.ts'
import { linkedText } from '../linked-text.ts'
import { say, sayNumber } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import type { Drawing } from '../../view/svg-file.ts'
import { stripForPaper } from './strip-for-paper.ts'
import { StripElement } from './strip-element.ts'
import { stripStyles } from './strip-styles.ts'
import { patchWords, told } from './told.ts'

/** How far each key moves the head; Home and End go to the ends of the strip. */
const steps: Readonly<Partial<Record<string, number>>> = {
  ArrowLeft: -1,
  ArrowUp: -1,
  ArrowRight: 1,
  ArrowDown: 1,
  Home: -Infinity,
  End: Infinity,
}

/** Characters that fit on a patch. */
const longestLabel = 6

export class PatchStrip extends StripElement {
  static override styles = [
    sharedStyles,
    stripStyles,
    css`
      /* A strip is read as it comes off the press, so the arrow keys mean the same in every language. */
      .patches {
        display: flex;
        direction: ltr;
        flex-wrap: wrap;
        gap: 8px 16px;
        margin: 8px 0;
        padding: 12px;
        border: 1px solid var(--edge);
        background: var(--paper);
      }
      .group {
        display: flex;
        flex-wrap: wrap;
        gap: 2px;
      }
      button {
        position: relative;
        width: 3.75rem;
        min-height: 4.25rem;
        padding: 0 0 4px;
        border: 1px solid #857e72;
        border-radius: 0;
        background: var(--patch);
        forced-color-adjust: none;
      }
      button:hover:not(:disabled, [aria-pressed='true']),
      button[aria-pressed='true'] {
        background: var(--patch);
      }
      button.blind,
      button.blind:hover:not(:disabled, [aria-pressed='true']) {
        background: repeating-linear-gradient(135deg, #8c8c8c 0 6px, #d9d9d9 6px 12px);
      }
      button:focus-visible {
        z-index: 1;
        outline: 3px solid #0a6358;
        outline-offset: 2px;
        box-shadow: 0 0 0 2px #fdfcfa;
      }
      @media (max-width: 30em) {
        button {
          width: 3.125rem;
        }
      }
      .outside::before {
        position: absolute;
        top: 0;
        right: 0;
        border-top: 12px solid #fdfcfa;
        border-inline-start: 12px solid transparent;
        content: '';
      }
      .outside::after {
        position: absolute;
        top: 0;
        right: 0;
        border-top: 9px solid #2a2927;
        border-inline-start: 9px solid transparent;
        content: '';
      }
      .letters {
        position: absolute;
        right: 0;
        bottom: 0;
        left: 0;
        background: #fdfcfa;
        color: #2a2927;
        font-size: 0.8125rem;
        font-weight: 600;
        line-height: 1.125rem;
        overflow-wrap: anywhere;
      }
      .head {
        position: absolute;
        top: 6px;
        left: 50%;
        width: 2.25rem;
        height: 2.25rem;
        border: 3px solid #2a2927;
        border-radius: 50%;
        box-shadow:
          0 0 0 3px #fdfcfa,
          inset 0 0 0 2px #fdfcfa;
        transform: translateX(-50%);
      }
    `,
  ]

  override render() {
    const { strip, patch } = this
    const letters = inkLetters(this.inkNames)
    const size = (each: number) => readPatch(strip, each).units.length
    const sizes = [...new Set(strip.patches.map(size))]
    return html`
      <p>${linkedText(say('strip.intro'))}</p>
      <div class="patches" role="group" aria-label=${say('strip.patches')} @keydown=${this.#key}>
        ${sizes.map(
          (inks) =>
            html`<div class="group">
              ${strip.patches
                .filter((each) => size(each) === inks)
                .map((each) => this.#patch(each, each === patch, letters))}
            </div>`,
        )}
      </div>
      <p aria-live="polite">${this.#sentence()}</p>
      <p class="note">${this.#origin()}</p>
    `
  }

  #patch(patch: number, chosen: boolean, letters: readonly string[]) {
    const { units, colour } = readPatch(this.strip, patch)
    const name = patchWords(units, this.inkNames)
    const label = this.#label(units, letters)
    return html`<button
      type="button"
      class=${isRefused(colour) ? 'blind' : colour.screen.outsideScreen ? 'outside' : ''}
      data-patch=${patch}
      data-colour=${isRefused(colour) ? nothing : colour.screen.hex}
      aria-pressed=${chosen}
      title=${units.length === 0 ? name : say('strip.patchName', { letters: label, name })}
      tabindex=${chosen ? 0 : -1}
      ?disabled=${!chosen && this.isClosed('patch')}
      @click=${() => this.choosePatch(patch)}
    >
      ${chosen ? html`<span class="head"></span>` : nothing}
      <span class="letters" aria-hidden="true">${label}</span>
    </button>`
  }

  /** What is written on the patch: the letters of its inks, or a word where they would not fit. */
  #label(units: readonly number[], letters: readonly string[]): string {
    if (units.length === 0) return say('strip.paperShort')
    const joined = units.map((unit) => letters[unit]).join('')
    return joined.length > longestLabel ? say('strip.allShort') : joined
  }

  /** One sentence on the patch under the head, for those who move it and look elsewhere, or listen. */
  #sentence() {
    const { strip, patch, inkNames } = this
    const { status, filter } = this.desk.state
    const { units, colour } = readPatch(strip, patch)
    const name = patchWords(units, inkNames)
    const trap = trapAt(strip, patch, status, filter ?? undefined)
    if (!trap) return isRefused(colour) ? linkedText(told(colour.refused)) : say('strip.underHead', { name })
    const values = {
      name,
      later: inkNames[trap.later],
      below: patchWords(trap.below, inkNames),
      mass: trap.massTrap === null ? say('strip.unknown') : sayNumber(100 * trap.massTrap, 0),
    }
    if (isRefused(trap.apparent)) return say('strip.underHeadMass', values)
    return say('strip.underHeadTrap', { ...values, apparent: sayNumber(trap.apparent.percent.preucil, 0) })
  }

  #origin() {
    const { optics, colours, patches } = this.strip
    const outside = patches.some((patch) => {
      const { colour } = readPatch(this.strip, patch)
      return !isRefused(colour) && colour.screen.outsideScreen
    })
    return [
      say('strip.reconstructed', { set: optics.dataSet }),
      ...(colours.some(({ kind }) => kind === 'spot') ? [say('strip.spotReconstructed')] : []),
      ...(outside ? [say('strip.outsideMark')] : []),
    ].join(' ')
  }

  /** The patches once more, for a file and for paper. */
  printed(): Drawing {
    const letters = inkLetters(this.inkNames)
    return stripForPaper(
      this.strip.patches.map((patch) => {
        const { units, colour } = readPatch(this.strip, patch)
        return {
          inks: units.length,
          label: this.#label(units, letters),
          colour: isRefused(colour) ? null : colour.screen.hex,
        }
      }),
    )
  }

  get pictureName(): string {
    return say('tools.picture.strip')
  }

  get summary(): string {
    return say('tools.pictureShows.strip')
  }

  readonly #key = (event: KeyboardEvent): void => {
    const step = steps[event.key]
    if (step === undefined || this.isClosed('patch')) return
    event.preventDefault()
    const { patches } = this.strip
    const place = Math.min(patches.length - 1, Math.max(0, patches.indexOf(this.patch) + step))
    const patch = patches[place]
    this.choosePatch(patch)
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector<HTMLElement>(`[data-patch='${String(patch)}']`)?.focus(),
    )
  }

  override updated(changed: PropertyValues): void {
    super.updated(changed)
    for (const button of this.renderRoot.querySelectorAll<HTMLElement>('[data-patch]')) {
      button.style.setProperty('--patch', button.dataset['colour'] ?? '')
    }
  }
}

customElements.define('tack-patch-strip', PatchStrip)
