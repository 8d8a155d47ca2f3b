/** The lecture: being prepared, or shown to the class once the address or a person asks for a scene. */
import { css, html } from 'lit'
import { sharedStyles } from '../shared-styles.ts'
import { addressOf } from '../address.ts'
import { LectureElement } from './lecture-element.ts'
import './lecture-prepare.ts'
import './lecture-show.ts'

export class LectureView extends LectureElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        min-height: 0;
      }
    `,
  ]

  override render() {
    const { session, lecture } = this
    const { scene } = session.look
    if (scene !== null && lecture.scenes.length > 0)
      return html`<tack-lecture-show
        .session=${session}
        .now=${() => Date.now()}
        @left=${({ detail }: CustomEvent<number>) => this.#leave(detail)}
      ></tack-lecture-show>`
    return html`<tack-lecture-prepare
      .session=${session}
      @show=${({ detail }: CustomEvent<number>) => this.#show(detail)}
    ></tack-lecture-prepare>`
  }

  #show(at: number): void {
    history.pushState(null, '', `${addressOf('lecture')}&scene=${at + 1}`)
    this.session.lookWith({ scene: at })
  }

  #leave(at: number): void {
    this.lecture.chosen = at
    history.replaceState(null, '', addressOf('lecture'))
    this.session.lookWith({ scene: null })
  }
}

customElements.define('tack-lecture-view', LectureView)
