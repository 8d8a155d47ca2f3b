/** For instructors: chooses what goes into a package for a learning system, and makes it. */
import { LitElement, css, html, nothing } from 'lit'
import { contentsOf } from '../../report/learning-package/contents-of.ts'
import { packageName, packageZip } from '../../report/learning-package/package-files.ts'
import type { Parcel, Standard } from '../../report/learning-system/launch.ts'
import { mostDrills, standards } from '../../report/learning-system/launch.ts'
import { language } from '../language.ts'
import { course, courseLesson } from '../lessons/course-files.ts'
import { readNumber } from '../read-number.ts'
import { say } from '../say.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveBlob } from '../tools/save-blob.ts'
import { toolStyles } from '../tools/tool-styles.ts'
import { ownPage } from './own-page.ts'

export class PackPanel extends LitElement {
  static override properties = {
    language: { attribute: false },
    standard: { state: true },
    chosen: { state: true },
    said: { state: true },
    problem: { state: true },
  }
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      .lessons {
        display: grid;
        grid-template-columns: repeat(auto-fill, minmax(min(100%, 16.25rem), 1fr));
        gap: 4px 16px;
        margin: 8px 0;
      }
      .lessons label {
        display: flex;
        gap: 6px;
        align-items: center;
        min-height: 1.75rem;
      }
      .lessons input {
        flex: none;
      }
      .numbers input {
        width: 6rem;
      }
    `,
  ]

  declare protected standard: Standard
  declare protected chosen: ReadonlySet<string>
  declare protected said: string
  declare protected problem: string

  constructor() {
    super()
    this.standard = 'scorm-1.2'
    this.chosen = new Set(course.lessons)
    this.said = ''
    this.problem = ''
  }

  override render() {
    return html`
      <p>${say('system.packHow')}</p>
      <form novalidate @submit=${this.#submit}>
        <label class="field"
          >${say('system.standard')}
          <select @change=${this.#standard}>
            ${standards.map(
              (each) =>
                html`<option value=${each} ?selected=${each === this.standard}>
                  ${say(`system.standard.${each}`)}
                </option>`,
            )}
          </select>
        </label>
        <fieldset>
          <legend>${say('system.lessons')}</legend>
          <div class="lessons">
            ${course.lessons.map(
              (id) =>
                html`<label
                  ><input
                    type="checkbox"
                    .checked=${this.chosen.has(id)}
                    @change=${(event: Event) => this.#choose(id, (event.target as HTMLInputElement).checked)}
                  />${courseLesson(id).title}</label
                >`,
            )}
          </div>
        </fieldset>
        <div class="row numbers">
          <label class="row"
            >${say('system.drills')}
            <input type="text" name="drills" inputmode="numeric" autocomplete="off" value="0" />
          </label>
          <label class="row"
            >${say('system.mastery')}
            <input type="text" name="mastery" inputmode="decimal" autocomplete="off" />
          </label>
        </div>
        <p role="alert">${this.problem === '' ? nothing : this.problem}</p>
        <div class="row">
          <button type="submit" class="main">${say('system.make')}</button>
          <span role="status">${this.said}</span>
        </div>
      </form>
    `
  }

  readonly #standard = (event: Event): void => {
    const { value } = event.target as HTMLSelectElement
    this.standard = standards.find((each) => each === value) ?? this.standard
  }

  #choose(id: string, isChosen: boolean): void {
    this.chosen = new Set(course.lessons.filter((each) => (each === id ? isChosen : this.chosen.has(each))))
  }

  readonly #submit = (event: SubmitEvent): void => {
    event.preventDefault()
    const form = new FormData(event.currentTarget as HTMLFormElement)
    const parcel = this.#parcelIn(form)
    this.said = ''
    this.problem = typeof parcel === 'string' ? parcel : ''
    if (typeof parcel !== 'string') void this.#make(parcel)
  }

  /** What is wished for, or what is wrong with it. */
  #parcelIn(form: FormData): Parcel | string {
    const typed = (name: string) => {
      const value = form.get(name)
      return typeof value === 'string' ? value.trim() : ''
    }
    const drills = readNumber(typed('drills'))
    if (drills === null || !Number.isInteger(drills) || drills < 0 || drills > mostDrills) {
      return say('system.drillsAllowed', { given: `“${typed('drills').slice(0, 20)}”`, most: mostDrills })
    }
    const percent = typed('mastery') === '' ? null : readNumber(typed('mastery'))
    if (typed('mastery') !== '' && (percent === null || percent < 0 || percent > 100)) {
      return say('system.masteryAllowed', { given: `“${typed('mastery').slice(0, 20)}”` })
    }
    const lessons = course.lessons.filter((id) => this.chosen.has(id))
    if (lessons.length + drills === 0) return say('system.nothing')
    return { lessons, drills, mastery: percent === null ? null : Number((percent / 100).toFixed(4)) }
  }

  async #make(parcel: Parcel): Promise<void> {
    const { standard } = this
    const page = await ownPage()
    const contents = contentsOf({ standard, parcel }, (id) => courseLesson(id).title, language().tag, say)
    const zip = page === null ? null : packageZip(contents, page)
    if (!zip) {
      this.problem = say('system.noFile')
      return
    }
    saveBlob(packageName(standard), new Blob([zip as Uint8Array<ArrayBuffer>], { type: 'application/zip' }))
    this.said = say('system.made')
  }
}

customElements.define('tack-pack-panel', PackPanel)
