/** The cautions of a step, before anything else about it. */
import { html } from 'lit'
import type { CautionKey } from '../../press/cautions.ts'
import { say } from '../say.ts'

export function cautionList(cautions: readonly CautionKey[]) {
  return html`<div class="mark">
    <h3>${say('room.cautions')}</h3>
    <ul>
      ${cautions.map((caution) => html`<li>${say(caution)}</li>`)}
    </ul>
  </div>`
}
