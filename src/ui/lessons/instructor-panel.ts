/** For whoever teaches: any step at once, feedback kept back for the class, and the author's notes. */
import { LitElement, css, html } from 'lit'
import type { Lesson } from '../../lesson/lesson.ts'
import { addressOf } from '../address.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'

export interface InstructorWish {
  hideFeedback: boolean
  showNotes: boolean
}

export class InstructorPanel extends LitElement {
  static override properties = {
    lesson: { attribute: false },
    step: {},
    wish: { attribute: false },
  }
  static override styles = [
    sharedStyles,
    css`
      div {
        display: grid;
        gap: 8px;
        justify-items: start;
      }
      label {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 8px;
        align-items: center;
        max-width: 100%;
        font-size: 0.9375rem;
      }
      select {
        max-width: 100%;
      }
      a {
        color: var(--accent);
        font-size: 0.9375rem;
      }
    `,
  ]

  declare lesson: Lesson
  declare step: string
  declare wish: InstructorWish

  override render() {
    const { lesson, wish } = this
    return html`<details>
      <summary>${say('lessons.instructor')}</summary>
      <div>
        <label>
          ${say('lessons.goToStep')}
          <select @change=${(event: Event) => this.#tell('jump', (event.target as HTMLSelectElement).value)}>
            ${lesson.steps.map(
              ({ id, kind }, at) =>
                html`<option value=${id} .selected=${id === this.step}>
                  ${at + 1}: ${say(`lessons.stepKind.${kind}`)} (${id})
                </option>`,
            )}
          </select>
        </label>
        ${(['hideFeedback', 'showNotes'] as const).map(
          (each) =>
            html`<label
              ><input
                type="checkbox"
                .checked=${wish[each]}
                @change=${() => this.#tell('wish', { ...wish, [each]: !wish[each] })}
              />${say(`lessons.${each}`)}</label
            >`,
        )}
        <button type="button" @click=${() => this.#tell('start-again', null)}>${say('lessons.startAgain')}</button>
        <a href=${addressOf('board')}>${say('board.open')}</a>
      </div>
    </details>`
  }

  #tell(type: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(type, { detail }))
  }
}

customElements.define('tack-instructor-panel', InstructorPanel)
