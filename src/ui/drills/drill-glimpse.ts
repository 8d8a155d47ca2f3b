/** What a drill begins with, before one is open: a patch of the good sheet and the same patch of the bad one. */
import { LitElement, css, html, svg } from 'lit'
import { jobs } from '../../drill/jobs.ts'
import { Colours } from '../../session/colours.ts'
import { say } from '../say.ts'

/** um of the job's inks: a green as it should be, and one whose yellow has not stayed. Chosen to be told apart. */
const films = { goodSheet: [0, 1, 0, 0.85], thisSheet: [0, 1, 0, 0.4] } as const

export class DrillGlimpse extends LitElement {
  static override styles = css`
    svg {
      display: block;
      /* As all pictures, from left to right in every language. */
      direction: ltr;
      width: 100%;
      max-width: 20rem;
      height: auto;
      margin-top: 12px;
    }
    text {
      fill: var(--graphite);
      font-size: 14px;
      text-anchor: middle;
    }
    .sheet {
      fill: var(--paper);
      stroke: var(--edge);
    }
  `

  override render() {
    const colours = new Colours(jobs['harvest poster'])
    return html`<svg viewBox="0 0 320 132" role="img" aria-label=${say('room.glimpse')}>
      ${(['goodSheet', 'thisSheet'] as const).map((which, at) => {
        const x = 4 + at * 164
        return svg`<rect class="sheet" x=${x} y="4" width="148" height="104"></rect>
          <rect x=${x + 34} y="24" width="80" height="64" fill=${colours.of(films[which])}></rect>
          <text x=${x + 74} y="126">${say(`room.${which}`)}</text>`
      })}
    </svg>`
  }
}

customElements.define('tack-drill-glimpse', DrillGlimpse)
