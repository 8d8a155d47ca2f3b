/** The text that shows the bench inside another page, with chosen parts left out. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import { addressOf } from '../../report/qr-picture.ts'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import './copy-text.ts'
import type { PartToHide } from './hidden-parts.ts'
import { partNames, partsToHide } from './hidden-parts.ts'
import { presentLink } from './present-link.ts'
import { toolStyles } from './tool-styles.ts'

/** px: all of the bench but the head on a usual screen. */
const usualHeight = 700

export class EmbedPanel extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    page: {},
    leftOut: { state: true },
  }
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      fieldset {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 12.5rem), 1fr));
        gap: 4px 16px;
        margin: 8px 0;
      }
      legend {
        margin-bottom: 4px;
      }
      label {
        display: flex;
        gap: 4px;
        align-items: center;
        min-height: 1.75rem;
      }
    `,
  ]

  /** public address of the page */
  declare page: string
  declare protected leftOut: ReadonlySet<PartToHide>

  constructor() {
    super()
    this.leftOut = new Set(['header', 'scenarios'])
  }

  override render() {
    const hide = partNames.flatMap((name) => (this.leftOut.has(name) ? partsToHide[name] : []))
    const address = addressOf(this.page, presentLink(this.session, hide).text) ?? ''
    const isNothing = partNames.every((name) => this.leftOut.has(name))
    return html`
      <p>${say('tools.embedHow')}</p>
      <fieldset>
        <legend>${say('tools.leaveOut')}</legend>
        ${partNames.map(
          (name) =>
            html`<label>
              <input
                type="checkbox"
                .checked=${this.leftOut.has(name)}
                @change=${(event: Event) => this.#choose(name, (event.target as HTMLInputElement).checked)}
              />
              ${say(`tools.part.${name}`)}
            </label>`,
        )}
      </fieldset>
      ${
        isNothing
          ? html`<p role="status">${say('tools.leaveOutAll')}</p>`
          : html`<tack-copy-text .label=${say('tools.embedText')} .text=${frameText(address)}></tack-copy-text>
              <p><a href=${address} target="_blank" rel="noopener">${say('tools.try')}</a></p>`
      }
    `
  }

  #choose(name: PartToHide, leave: boolean): void {
    this.leftOut = new Set(partNames.filter((each) => (each === name ? leave : this.leftOut.has(each))))
  }
}

function frameText(address: string): string {
  const title = escaped(say('tools.embedTitle'))
  return `<iframe src="${escaped(address)}" title="${title}" width="100%" height="${usualHeight}" loading="lazy"></iframe>`
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;')
}

customElements.define('tack-embed-panel', EmbedPanel)
