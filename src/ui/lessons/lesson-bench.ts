/** The bench as it stands beside a lesson: only what the lesson shows, one picture at a time where room is short. */
import type { PropertyValues } from 'lit'
import { css, html, nothing } from 'lit'
import type { Control } from '../../lesson/control.ts'
import type { Picture, Step } from '../../lesson/step.ts'
import type { ChooseEvent } from '../choice.ts'
import '../choice.ts'
import { runClock } from '../clock.ts'
import '../ink-ladder.ts'
import '../line-picture.ts'
import '../loupe-panel.ts'
import '../paper-panel.ts'
import '../patch-switch.ts'
import '../press-panel.ts'
import '../reading-switch.ts'
import '../readings-strip.ts'
import { say } from '../say.ts'
import '../section-panel.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import '../strip/densitometer.ts'
import '../telling.ts'
import '../transport.ts'

/** Each picture with its name, and the word of the glossary that has to be known for it. */
const pictures = [
  { value: 'section', name: 'bench.section', term: 'nip' },
  { value: 'loupe', name: 'bench.loupe', term: 'loupe' },
  { value: 'press line', name: 'bench.line', term: 'unit' },
] as const satisfies readonly { value: Picture; name: string; term: string }[]

/** Settings that stand in the list of inks. */
const ofInks: readonly Control[] = ['order', 'tack', 'film', 'coverage']
const ofPaper: readonly Control[] = ['paper', 'surface strength', 'absorbency']
const ofPress: readonly Control[] = ['kind', 'speed', 'interval', 'temperature', 'dampening', 'waterless']

export class LessonBench extends SessionElement {
  static override properties = {
    show: { attribute: false },
    step: { attribute: false },
    metered: { type: Boolean },
    veiled: { type: Boolean },
    readingsVeiled: { type: Boolean },
    _picture: { state: true },
    _narrow: { state: true },
  }
  static override styles = [
    sharedStyles,
    css`
      :host {
        container: bench / inline-size;
      }
      .bench {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
      }
      .panel {
        position: relative;
        padding: calc(8px - var(--hairline)) calc(12px - var(--hairline));
      }
      .settings,
      .results {
        display: grid;
        grid-template-columns: minmax(0, 1fr);
        gap: 8px;
        align-content: start;
      }
      .results {
        container: results / inline-size;
      }
      .veil {
        display: grid;
        place-items: center;
        min-height: 10rem;
        padding: 24px;
        background: repeating-linear-gradient(135deg, var(--panel) 0 14px, var(--ground) 14px 16px);
        font-size: 1.0625rem;
        text-align: center;
      }
      .pictures {
        display: grid;
        gap: 4px;
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        gap: 4px 16px;
        align-items: center;
        justify-content: space-between;
      }
      .pictures > :last-child {
        height: 20rem;
      }
      .first .pictures > :last-child {
        height: 15rem;
      }
      tack-telling {
        --pull-scale: table-footer-group;
      }
      @container bench (min-width: 40rem) {
        .bench {
          grid-template-columns: minmax(19rem, 1fr) minmax(19rem, 1fr);
          align-items: start;
        }
      }
      @container bench (min-width: 51.25rem) {
        .bench {
          grid-template-columns: minmax(25rem, 2fr) minmax(0, 3fr);
          align-items: start;
        }
        .pictures > :last-child {
          height: clamp(16.25rem, 44dvh, 32.5rem);
        }
      }
      /* So that the pulls, which lessons ask to be read, are seen below the picture. */
      @media (max-height: 53.75em) {
        .pictures > :last-child {
          height: 16rem;
        }
        .two .pictures > :last-child {
          height: 18rem;
        }
      }
      /* Where nothing is told below but readings, the picture has their room as well. */
      @container bench (min-width: 51.25rem) {
        .alone .pictures > :is(tack-loupe-panel, tack-section-panel):last-child {
          height: clamp(16rem, 100dvh - 17rem, 36rem);
        }
      }
    `,
  ]

  /** controls the lesson shows; all where undefined */
  declare show: readonly Control[] | undefined
  /** the open step, as far as it says which picture to turn to */
  declare step: Pick<Step, 'picture'> | undefined
  /** the densitometer stands beside the bench, once it has been explained */
  declare metered: boolean
  /** what came of the print is covered, so that a prediction is one */
  declare veiled: boolean
  /** only the readings are covered, as a prediction of them is near */
  declare readingsVeiled: boolean
  declare _picture: Picture
  /** one thing stands below the other: first what the lesson works with */
  declare _narrow: boolean
  readonly #oneColumn = window.matchMedia('(width < 41em), (40em <= width < 56.25em) and (height < 31.25em)')
  #stopClock: (() => void) | undefined

  constructor() {
    super()
    this._picture = 'section'
    this.metered = false
    this._narrow = this.#oneColumn.matches
    this.veiled = false
    this.readingsVeiled = false
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#stopClock = runClock(this.session)
    this.#oneColumn.addEventListener('change', this.#turn)
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#stopClock?.()
    this.#oneColumn.removeEventListener('change', this.#turn)
  }

  readonly #turn = (): void => {
    this._narrow = this.#oneColumn.matches
  }

  override willUpdate(changed: PropertyValues): void {
    if (changed.has('step') && this.step?.picture) this._picture = this.step.picture
  }

  #patch = 0

  /** Where another patch leaves the unit looked at out, the last one that prints in it is looked at. */
  override updated(): void {
    const { patch, playback } = this.session
    if (patch === this.#patch) return
    this.#patch = patch
    if (patch !== 0 && (patch & (1 << playback.unit)) === 0) {
      this.session.play({ kind: 'look at unit', unit: 31 - Math.clz32(patch) })
    }
  }

  override render() {
    const first = this._narrow && !this.#shows(ofInks)
    const results = this.veiled ? html`<p class="panel veil">${say('lessons.veiled')}</p>` : this.#results()
    const settings = this.#settings(first)
    return html`<div class="bench ${first ? 'first' : ''}">${first ? [results, settings] : [settings, results]}</div>`
  }

  /** `inksLast` where they are only looked at. */
  #settings(inksLast: boolean) {
    const { session } = this
    const inks = html`<tack-ink-ladder class="panel" .session=${session}></tack-ink-ladder>`
    return html`<div class="settings" role="group" aria-label=${say('bench.settings')}>
      ${
        this.#shows(['sheet'])
          ? html`<tack-reading-switch class="panel" .session=${session}></tack-reading-switch>`
          : nothing
      }
      ${inksLast ? nothing : inks}
      ${this.#shows(ofPaper) && this.knows('coated-paper') ? html`<tack-paper-panel class="panel" ?unfolded=${this.#names(ofPaper)} .session=${session}></tack-paper-panel>` : nothing}
      ${this.#shows(ofPress) ? html`<tack-press-panel class="panel" ?unfolded=${this.#names(ofPress)} .session=${session}></tack-press-panel>` : nothing}
      ${this.knows('unit') ? html`<tack-transport once class="panel" .session=${session}></tack-transport>` : nothing}
      ${this.metered && this.knows('densitometer') ? html`<tack-densitometer brief class="panel" .session=${session}></tack-densitometer>` : nothing}
      ${this.#tells && !this.veiled ? html`<tack-telling half="what" class="panel" .session=${session}></tack-telling>` : nothing}
      ${inksLast ? inks : nothing}
    </div>`
  }

  /** What happened stands below what made it happen, so that picture, readings and pulls are seen at once. */
  get #tells(): boolean {
    return this.knows('weakest-film', 'pull')
  }

  #results() {
    const { session } = this
    const known = pictures.filter(({ term }) => this.knows(term))
    const shown = known.find(({ value }) => value === this._picture) ?? known.at(-1)
    const room = [...(this.#tells ? [] : ['alone']), ...(session.setUp.inks.length > 2 ? [] : ['two'])].join(' ')
    return html`<div class="results ${room}">
      <div class="panel pictures" role="group" aria-label=${say('bench.pictures')}>
        <div class="head">
          ${
            known.length > 1
              ? html`<tack-choice
                  .legend=${say('bench.picture')}
                  .options=${known.map(({ value, name }) => ({ value, label: say(name) }))}
                  .value=${shown?.value}
                  @choose=${(event: ChooseEvent) => (this._picture = event.value as Picture)}
                ></tack-choice>`
              : nothing
          }
          ${
            this.knows('patch') && shown?.value !== 'section'
              ? html`<tack-patch-switch .session=${session}></tack-patch-switch>`
              : nothing
          }
        </div>
        ${shown ? this.#picture(shown.value, known.length) : html`<p class="veil">${say('lessons.nothingYet')}</p>`}
      </div>
      ${this.knows('ink-film', 'micrometre') ? this.#readings() : nothing}
      ${this.#tells ? html`<tack-telling half="why" class="panel" .session=${session}></tack-telling>` : nothing}
    </div>`
  }

  #readings() {
    if (this.readingsVeiled) return html`<p class="panel">${say('lessons.readingsVeiled')}</p>`
    return html`<tack-readings-strip wraps class="panel" .session=${this.session}></tack-readings-strip>`
  }

  #picture(shown: Picture, known: number) {
    const { session } = this
    if (shown === 'loupe') return html`<tack-loupe-panel untitled .session=${session}></tack-loupe-panel>`
    if (shown === 'press line') return html`<tack-line-picture .session=${session}></tack-line-picture>`
    return html`<tack-section-panel ?untitled=${known > 1} .session=${session}></tack-section-panel>`
  }

  /** Whether the lesson names one of these among the few it has, and does not just leave everything on. */
  #names(controls: readonly Control[]): boolean {
    return this.show !== undefined && this.#shows(controls)
  }

  #shows(controls: readonly Control[]): boolean {
    const { show } = this
    return show === undefined || controls.some((control) => show.includes(control))
  }
}

customElements.define('tack-lesson-bench', LessonBench)
