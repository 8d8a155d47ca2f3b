/** The fault drills: a job with something hidden wrong in it, to be found from the evidence and put right. */
import { html } from 'lit'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'

export class DrillsView extends SessionElement {
  override render() {
    return html`<main><h2>${say('page.drills')}</h2></main>`
  }
}

customElements.define('tack-drills-view', DrillsView)
