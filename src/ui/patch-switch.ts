/** Which inks print in the patch looked at: one button for each, pressed where it prints. */
import { css, html } from 'lit'
import { inkLetters } from '../session/letters.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class PatchSwitch extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
      }
      span {
        font-size: 0.875rem;
      }
      button {
        min-width: 2rem;
      }
      @media (pointer: coarse) {
        button {
          min-width: 44px;
        }
      }
    `,
  ]

  override render() {
    const { inks } = this.session.setUp
    const { leftOut } = this.session.look
    const letters = inkLetters(inks.map((ink) => ink.name))
    return html`<div role="group" aria-label=${say('bench.patchLabel')}>
      <span>${say('bench.patch')}</span>
      ${inks.map(({ name }, unit) => {
        const prints = !leftOut.includes(name)
        return html`<button
          type="button"
          aria-pressed=${prints}
          ?disabled=${this.isClosed('patch')}
          title=${say('bench.printsInPatch', { name })}
          @click=${() => this.#show(name, !prints)}
        >
          <span aria-hidden="true">${letters[unit]}</span>
        </button>`
      })}
    </div>`
  }

  #show(name: string, prints: boolean): void {
    const others = this.session.look.leftOut.filter((other) => other !== name)
    this.session.lookWith({ leftOut: prints ? others : [...others, name] })
  }
}

customElements.define('tack-patch-switch', PatchSwitch)
