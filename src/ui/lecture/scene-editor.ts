/** One scene being prepared: how it looks, what it says, which picture and number it has, and its set-up. */
import type { PropertyDeclarations } from 'lit'
import { css, html, nothing } from 'lit'
import { keyed } from 'lit/directives/keyed.js'
import { pictureOf, pressesOf } from '../../session/lecture-show.ts'
import { writeLink } from '../../session/link.ts'
import type { ScenarioName } from '../../session/scenarios.ts'
import { scenarioNames, scenarios } from '../../session/scenarios.ts'
import type { Scene, ScenePicture } from '../../session/scene.ts'
import { longestNote, longestSentence, scenePictures } from '../../session/scene.ts'
import { numbersOf } from '../../session/scene-number.ts'
import { benchForScene, openScene, restingPhase } from '../../session/scene-session.ts'
import type { Session } from '../../session/session.ts'
import { showView } from '../../session/snapshot.ts'
import { writeSetUp } from '../../session/write-setup.ts'
import { checkSetUp } from '../../press/check-setup.ts'
import { addressOf as addressOfPage } from '../../report/qr-picture.ts'
import { ordersStyles } from '../orders/orders-styles.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import '../tools/copy-text.ts'
import { givenAddress, isOnWeb } from '../tools/public-address.ts'
import { trialStyles } from '../trials/trial-styles.ts'
import { LectureElement } from './lecture-element.ts'
import { numberName } from './number-words.ts'
import './scene-stage.ts'

export class SceneEditor extends LectureElement {
  static override properties: PropertyDeclarations = {
    ...LectureElement.properties,
    place: { type: Number },
  }
  static override styles = [
    sharedStyles,
    ordersStyles,
    trialStyles,
    css`
      tack-scene-stage {
        aspect-ratio: 16 / 9;
        margin-top: 8px;
        border: 1px solid var(--edge);
      }
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 18.75rem), 1fr));
        gap: 8px 24px;
        align-items: start;
        margin-top: 12px;
      }
      .wide {
        grid-column: 1 / -1;
      }
      select {
        max-width: 100%;
      }
      fieldset {
        margin-top: 16px;
        padding-top: 8px;
        border-top: 1px solid var(--line);
      }
      .top {
        display: flex;
        flex-wrap: wrap;
        gap: 8px;
        align-items: center;
        justify-content: space-between;
      }
    `,
  ]

  declare place: number

  #shown: { key: readonly unknown[]; benches: Session[] } | null = null

  override render() {
    const scene = this.lecture.scenes.at(this.place)
    if (!scene) return nothing
    const presses = pressesOf(scene).length
    const benches = this.#benchesOf(scene)
    return html`
      <div class="top">
        <h3>${say('lecture.edit', { number: this.place + 1 })}</h3>
        <button type="button" @click=${() => this.dispatchEvent(new Event('show-from'))}>
          ${say('lecture.showFrom')}
        </button>
      </div>
      ${keyed(
        benches,
        html`<tack-scene-stage
          small
          role="group"
          aria-label=${say('lecture.preview')}
          .scene=${scene}
          .benches=${benches}
          .press=${presses}
        ></tack-scene-stage>`,
      )}
      <p class="note">${say('lecture.preview')}; ${say('lecture.presses', { count: presses })}.</p>
      <div class="fields">
        <label class="wide"
          >${say('lecture.name')}
          <input
            type="text"
            maxlength=${longestSentence}
            autocomplete="off"
            .value=${scene.name}
            @input=${(event: Event) => this.#edit({ name: (event.target as HTMLInputElement).value })}
        /></label>
        <label class="wide"
          >${say('lecture.note')}
          <textarea
            rows="3"
            maxlength=${longestNote}
            .value=${scene.note}
            @input=${(event: Event) => this.#edit({ note: (event.target as HTMLTextAreaElement).value })}
          ></textarea>
        </label>
        <label
          >${say('lecture.picture')}
          <select
            @change=${(event: Event) => this.#edit({ picture: (event.target as HTMLSelectElement).value as ScenePicture })}
          >
            ${scenePictures.map(
              (picture) =>
                html`<option value=${picture} ?selected=${picture === pictureOf(scene)}>
                  ${say(`lecture.picture.${picture}`)}
                </option>`,
            )}
          </select></label
        >
        ${pictureOf(scene) === 'words' ? nothing : this.#number(scene)}
      </div>
      ${this.#setUp(scene)} ${pictureOf(scene) === 'words' ? nothing : this.#beside(scene)}
    `
  }

  #number(scene: Scene) {
    const offered = numbersOf(scene.setUp)
    const now = scene.number && JSON.stringify(scene.number)
    const hasNip = pictureOf(scene) !== 'ladder'
    return html`<label
        >${say('lecture.number')}
        <select
          @change=${(event: Event) => {
            const { value } = event.target as HTMLSelectElement
            this.#edit({ number: value === '' ? undefined : offered[Number(value)] })
          }}
        >
          <option value="" ?selected=${!scene.number}>${say('lecture.noNumber')}</option>
          ${offered.map(
            (number, index) =>
              html`<option value=${index} ?selected=${JSON.stringify(number) === now}>${numberName(number)}</option>`,
          )}
        </select></label
      >
      <div>
        ${
          hasNip
            ? html`<label class="check"
                ><input
                  type="checkbox"
                  .checked=${scene.plays === true}
                  @change=${(event: Event) => this.#edit({ plays: isChecked(event) })}
                />${say('lecture.plays')}</label
              >`
            : nothing
        }
        ${
          scene.number
            ? html`<label class="check"
                ><input
                  type="checkbox"
                  .checked=${scene.waits === true}
                  @change=${(event: Event) => this.#edit({ waits: isChecked(event) })}
                />${say('lecture.waits')}</label
              >`
            : nothing
        }
      </div>
      ${
        scene.number && scene.waits
          ? html`<label class="wide"
              >${say('lecture.question')}
              <input
                type="text"
                maxlength=${longestSentence}
                autocomplete="off"
                placeholder=${say('lecture.usualQuestion')}
                .value=${scene.question ?? ''}
                @input=${(event: Event) => this.#edit({ question: (event.target as HTMLInputElement).value })}
            /></label>`
          : nothing
      }`
  }

  #setUp(scene: Scene) {
    const { text } = writeLink(scene.setUp, scene.view)
    const page = isOnWeb() ? location.href : givenAddress()
    return html`<fieldset>
      <legend>${say('lecture.setUp')}</legend>
      <div class="row">
        <button type="button" @click=${() => this.#load(scene)}>${say('lecture.load')}</button>
        <button type="button" @click=${() => this.#update(scene)}>${say('lecture.update')}</button>
      </div>
      <details>
        <summary>${say('lecture.link')}</summary>
        <tack-copy-text .label=${say('lecture.link')} .text=${addressOfPage(page, text) ?? text}></tack-copy-text>
      </details>
    </fieldset>`
  }

  #beside(scene: Scene) {
    const { beside } = scene
    return html`<fieldset>
      <legend>${say('lecture.beside')}</legend>
      <p class="note">${say('lecture.besideHow')}</p>
      <div class="row">
        <button type="button" @click=${() => this.#second(benchForScene(this.session).setUp, '')}>
          ${say('lecture.besideTake')}
        </button>
        <label
          >${say('lecture.besideChoose')}
          <select @change=${this.#chooseSecond}>
            <option value="">${say('lecture.besideNone')}</option>
            ${scenarioNames.map((name) => html`<option value=${name}>${say(`bench.scenario.${name}`)}</option>`)}
          </select></label
        >
        ${
          beside
            ? html`<button type="button" @click=${() => this.#swap(scene)}>${say('lecture.swap')}</button>
                <button type="button" @click=${() => this.#edit({ beside: undefined, caption: undefined })}>
                  ${say('lecture.besideRemove')}
                </button>`
            : nothing
        }
      </div>
      ${
        beside
          ? html`<div class="fields">
              <label
                >${say('lecture.caption')}
                <input
                  type="text"
                  maxlength=${longestSentence}
                  autocomplete="off"
                  .value=${scene.caption ?? ''}
                  @input=${(event: Event) => this.#edit({ caption: (event.target as HTMLInputElement).value })}
              /></label>
              <label
                >${say('lecture.besideCaption')}
                <input
                  type="text"
                  maxlength=${longestSentence}
                  autocomplete="off"
                  .value=${beside.caption}
                  @input=${(event: Event) =>
                    this.#edit({ beside: { ...beside, caption: (event.target as HTMLInputElement).value } })}
              /></label>
            </div>`
          : nothing
      }
    </fieldset>`
  }

  /** A scene that was only reworded keeps its benches, and so its picture. */
  #benchesOf(scene: Scene): Session[] {
    const { setUp, view, beside } = scene
    const key = [setUp, view, beside?.setUp, this.session.look.measures]
    if (!this.#shown?.key.every((each, at) => each === key[at])) {
      this.#shown = { key, benches: openScene(scene, this.session.look) }
    }
    const { benches } = this.#shown
    for (const bench of benches) bench.play({ kind: 'scrub', phase: restingPhase(scene, pressesOf(scene).length) })
    return benches
  }

  #edit(part: Parameters<SceneEditor['lecture']['edit']>[1]): void {
    this.lecture.edit(this.place, part)
  }

  #load({ name, setUp, view }: Scene): void {
    const problem = this.attempt({ kind: 'load', given: writeSetUp(setUp) })
    if (problem === null) void showView(this.session, { ...view, view: 'lecture' })
    this.#say(problem ?? say('lecture.loaded', { name }))
  }

  #update({ name }: Scene): void {
    if (this.session.printing) {
      this.#say(say('lecture.printing'))
      return
    }
    this.#edit(benchForScene(this.session))
    this.#say(say('lecture.updated', { name }))
  }

  readonly #chooseSecond = (event: Event): void => {
    const select = event.target as HTMLSelectElement
    const name = select.value as ScenarioName | ''
    select.value = ''
    if (name === '') return
    const checked = checkSetUp(scenarios[name])
    if ('setUp' in checked) this.#second(checked.setUp, say(`bench.scenario.${name}`))
  }

  #second(setUp: Scene['setUp'], caption: string): void {
    this.#edit({ beside: { setUp, caption } })
  }

  #swap({ setUp, caption = '', beside }: Scene): void {
    if (beside) this.#edit({ setUp: beside.setUp, caption: beside.caption, beside: { setUp, caption } })
  }

  #say(words: string): void {
    this.dispatchEvent(new CustomEvent('said', { detail: words }))
  }
}

function isChecked(event: Event): true | undefined {
  return (event.target as HTMLInputElement).checked || undefined
}

customElements.define('tack-scene-editor', SceneEditor)
