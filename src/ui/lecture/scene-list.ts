/** The scenes in their order: one of them is worked on, and each can be moved, copied and taken out. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import { pictureOf, pressesOf } from '../../session/lecture-show.ts'
import type { Scene } from '../../session/scene.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { LectureElement } from './lecture-element.ts'
import './press-marks.ts'

type Doing = 'choose' | 'earlier' | 'later' | 'duplicate' | 'remove'

export class SceneListEvent extends Event {
  readonly doing: Doing
  readonly place: number

  constructor(doing: Doing, place: number) {
    super('scene-list')
    this.doing = doing
    this.place = place
  }
}

export class SceneList extends LectureElement {
  static override properties: PropertyDeclarations = { ...LectureElement.properties, chosen: { type: Number } }
  static override styles = [
    sharedStyles,
    css`
      ol {
        display: grid;
        gap: 4px;
        margin-top: 8px;
      }
      .choose {
        display: grid;
        grid-template-columns: 1.75rem minmax(0, 1fr);
        gap: 0 8px;
        width: 100%;
        min-height: 44px;
        padding: 4px 8px;
        border-color: var(--edge);
        color: var(--graphite);
        font-weight: 400;
        line-height: 1.25rem;
        text-align: start;
        overflow-wrap: anywhere;
      }
      .choose[aria-current] {
        border-color: var(--accent);
        border-inline-start-width: 6px;
        background: var(--accent-ground);
        font-weight: 650;
      }
      .number {
        text-align: end;
      }
      .what {
        display: flex;
        grid-column: 2;
        flex-wrap: wrap;
        gap: 0 8px;
        align-items: center;
        color: var(--soft);
        font-size: 0.875rem;
        font-weight: 400;
      }
      .doings {
        display: flex;
        flex-wrap: wrap;
        gap: 4px;
        margin: 4px 0 8px;
      }
      tack-press-marks {
        transform: scale(0.75);
        transform-origin: left;
      }
    `,
  ]

  /** place of the scene being worked on */
  declare chosen: number

  override render() {
    const { scenes } = this.lecture
    return html`<h3>${say('lecture.scenes')}: ${say('lecture.count', { count: scenes.length })}</h3>
      <ol @keydown=${this.#key}>
        ${scenes.map((scene, place) => html`<li>${this.#scene(scene, place)}</li>`)}
      </ol>`
  }

  #scene(scene: Scene, place: number) {
    const isChosen = place === this.chosen
    const presses = pressesOf(scene).length
    return html`<button
        type="button"
        class="choose"
        aria-current=${isChosen ? 'true' : nothing}
        @click=${() => this.#do('choose', place)}
      >
        <span class="number">${place + 1}</span>
        <span>${scene.name}</span>
        <span class="what">
          ${say(`lecture.picture.${pictureOf(scene)}`)}${scene.beside ? `, ${say('lecture.beside').toLowerCase()}` : ''}
          ${
            presses === 0
              ? nothing
              : html`<tack-press-marks aria-hidden="true" .made=${0} .count=${presses}></tack-press-marks>
                  <span class="unseen">, ${say('lecture.presses', { count: presses })}</span>`
          }
        </span>
      </button>
      ${isChosen ? this.#doings(scene, place) : nothing}`
  }

  #doings({ name }: Scene, place: number) {
    const last = this.lecture.scenes.length - 1
    const button = (doing: Exclude<Doing, 'choose'>, disabled = false) =>
      html`<button
        type="button"
        data-doing=${doing}
        aria-label=${say(`lecture.${doing}Named`, { name })}
        ?disabled=${disabled}
        @click=${() => this.#do(doing, place)}
      >
        ${say(`lecture.${doing}`)}
      </button>`
    return html`<div class="doings">
      ${button('earlier', place === 0)} ${button('later', place === last)} ${button('duplicate')} ${button('remove')}
    </div>`
  }

  #do(doing: Doing, place: number): void {
    this.dispatchEvent(new SceneListEvent(doing, place))
    void this.updateComplete.then(() => this.#keepFocus(doing))
  }

  /** The focus stays on what was pressed, or goes to the scene in its place. */
  #keepFocus(doing: Doing): void {
    const pressed = this.renderRoot.querySelector<HTMLButtonElement>(`[data-doing='${doing}']:enabled`)
    const goes = doing === 'choose' || doing === 'remove' || doing === 'duplicate' ? null : pressed
    const target = goes ?? this.renderRoot.querySelector<HTMLElement>('.choose[aria-current]')
    target?.focus()
  }

  /** Arrows go through the scenes; with Alt they carry the scene along. */
  readonly #key = (event: KeyboardEvent): void => {
    const by = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0
    const to = this.chosen + by
    if (by === 0 || event.ctrlKey || event.metaKey || !(to in this.lecture.scenes)) return
    event.preventDefault()
    if (event.altKey) this.#do(by > 0 ? 'later' : 'earlier', this.chosen)
    else this.#do('choose', to)
  }
}

customElements.define('tack-scene-list', SceneList)
