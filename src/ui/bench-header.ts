/** The head of the page: its name, which sheet is looked at, undo and redo, and light or dark. */
import { css, html } from 'lit'
import type { Look } from '../session/look.ts'
import './reading-switch.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

const themes = ['auto', 'light', 'dark'] as const

export class BenchHeader extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        align-items: center;
      }
      h1 {
        display: flex;
        gap: 8px;
        align-items: center;
        margin: 0;
        font-size: 20px;
        font-weight: 700;
        line-height: 28px;
      }
      svg {
        width: 26px;
        height: 20px;
        fill: var(--graphite);
      }
      .right {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        align-items: center;
        margin-left: auto;
      }
      label {
        margin-left: 12px;
        font-size: 15px;
      }
    `,
  ]

  override render() {
    const { session } = this
    return html`
      <h1>
        <svg viewBox="0 0 26 20" aria-hidden="true"><path d="M0 0h6v5h7v5h6v5h7v5H0z" /></svg>
        ${say('bench.title')}
      </h1>
      <p>${say('bench.job')}</p>
      <tack-reading-switch .session=${session}></tack-reading-switch>
      <div class="right">
        <button type="button" ?disabled=${!session.canUndo} @click=${() => session.undo()}>${say('bench.undo')}</button>
        <button type="button" ?disabled=${!session.canRedo} @click=${() => session.redo()}>${say('bench.redo')}</button>
        <label for="theme">${say('bench.theme')}</label>
        <select id="theme" @change=${this.#theme}>
          ${themes.map(
            (theme) =>
              html`<option value=${theme} ?selected=${theme === session.look.theme}>
                ${say(`bench.theme.${theme}`)}
              </option>`,
          )}
        </select>
      </div>
    `
  }

  #theme(event: Event): void {
    this.session.lookWith({ theme: (event.target as HTMLSelectElement).value as Look['theme'] })
  }
}

customElements.define('tack-bench-header', BenchHeader)
