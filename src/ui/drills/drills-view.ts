/** The fault drills: a job with something hidden wrong in it, to be found from the evidence and put right. */
import { css, html, nothing } from 'lit'
import type { Drill } from '../../drill/drill.ts'
import type { DrillPart } from '../../session/drill-desk.ts'
import { drillParts } from '../../session/drill-desk.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { viewStyles } from '../view-styles.ts'
import { countVisible } from '../visible-time.ts'
import './cure-panel.ts'
import './diagnosis-form.ts'
import './diagnosis-verdict.ts'
import { DrillElement } from './drill-element.ts'
import './drill-evidence.ts'
import './drill-record.ts'
import './drill-start.ts'
import { drillStyles } from './drill-styles.ts'
import './drill-ticket.ts'
import './remedies-panel.ts'

export class DrillsView extends DrillElement {
  static override styles = [
    sharedStyles,
    viewStyles,
    drillStyles,
    css`
      .work {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
        align-content: start;
      }
      @media (min-width: 68.75em) {
        .work {
          grid-template:
            'evidence ticket' auto
            'evidence name' auto
            'evidence cure' 1fr / minmax(0, 3fr) minmax(0, 2fr);
        }
        tack-drill-evidence {
          grid-area: evidence;
        }
        tack-drill-ticket {
          grid-area: ticket;
        }
        .name {
          grid-area: name;
        }
        tack-cure-panel {
          grid-area: cure;
          align-self: start;
        }
      }
    `,
  ]

  #stopFollowing: (() => void) | undefined
  #stopCounting: (() => void) | undefined

  override connectedCallback(): void {
    super.connectedCallback()
    // What is open belongs to what is looked at, so that a link or a draft comes back to it.
    this.#stopFollowing = this.desk.subscribe(() => {
      const { request } = this.desk.state
      if (request && this.session.look.drill !== request) this.session.lookWith({ drill: request })
    })
    this.#stopCounting = countVisible(this.desk.time, () => undefined)
    const { drill: asked } = this.session.look
    const { request } = this.desk.state
    if (asked && !(request && request.level === asked.level && request.seed === asked.seed)) void this.desk.open(asked)
    else if (!asked && !request) void this.desk.takeUp()
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#stopFollowing?.()
    this.#stopCounting?.()
  }

  override render() {
    const { part } = this.desk.state
    return html`<main>
      <div class="panel head">
        <h2>${say('page.drills')}</h2>
        <tack-choice
          .legend=${say('room.parts')}
          .options=${drillParts.map((value) => ({ value, label: say(`room.part.${value}`) }))}
          .value=${part}
          @choose=${({ value }: ChooseEvent) => this.desk.show(value as DrillPart)}
        ></tack-choice>
      </div>
      ${this.#content(part)}
    </main>`
  }

  #content(part: DrillPart) {
    const { session } = this
    switch (part) {
      case 'drill':
        return this.#drill()
      case 'remedies':
        return html`<tack-remedies-panel class="panel" .session=${session}></tack-remedies-panel>`
      case 'record':
        return html`<tack-drill-record class="panel" .session=${session}></tack-drill-record>`
    }
  }

  /** What the next drill is asked for with stays, and so does the focus on it. */
  #drill() {
    const { session } = this
    const { drill } = this.desk.state
    return html`<tack-drill-start class="panel" .session=${session}></tack-drill-start>
      ${drill ? this.#work(drill) : nothing}`
  }

  #work(drill: Drill) {
    const { session } = this
    return html`<div class="work">
      <tack-drill-ticket class="panel" .drill=${drill}></tack-drill-ticket>
      <tack-drill-evidence class="panel" .session=${session} .drill=${drill}></tack-drill-evidence>
      <div class="panel name">
        <tack-diagnosis-form .session=${session} .drill=${drill}></tack-diagnosis-form>
        <tack-diagnosis-verdict .session=${session}></tack-diagnosis-verdict>
      </div>
      <tack-cure-panel class="panel" .session=${session} .drill=${drill}></tack-cure-panel>
    </div>`
  }
}

customElements.define('tack-drills-view', DrillsView)
