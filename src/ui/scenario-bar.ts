/** Six set-ups of one made-up job, one click each, and what to look at in the one that is loaded. */
import { css, html } from 'lit'
import { scenarioNames } from '../session/scenarios.ts'
import { linkedText } from './linked-text.ts'
import { say } from './say.ts'
import { SessionElement } from './session-element.ts'
import { sharedStyles } from './shared-styles.ts'

export class ScenarioBar extends SessionElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        align-items: center;
      }
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
      }
      p {
        flex: 1 1 22.5rem;
        font-size: 0.9375rem;
        line-height: 1.1875rem;
      }
      /* On one screen what to look at has a line of its own, below the buttons and what stands beside them. */
      @media (min-width: 68.75em) {
        :host {
          display: contents;
        }
        p {
          order: 1;
          flex-basis: 100%;
          min-height: 1.1875rem;
        }
      }
    `,
  ]

  override render() {
    const { name, changed } = this.session.scenario
    return html`
      <div role="group" aria-label=${say('bench.scenarios')}>
        ${scenarioNames.map(
          (scenario) =>
            html`<button
              type="button"
              aria-pressed=${scenario === name && !changed}
              @click=${() => this.attempt({ kind: 'take scenario', scenario })}
            >
              ${say(`bench.scenario.${scenario}`)}
            </button>`,
        )}
      </div>
      <p>
        ${name === null ? '' : changed ? say('bench.changedFrom', { scenario: say(`bench.scenario.${name}`) }) : linkedText(say(`bench.lookAt.${name}`))}
      </p>
    `
  }
}

customElements.define('tack-scenario-bar', ScenarioBar)
