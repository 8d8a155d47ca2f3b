/** The pictures of the open view as files: which one, how wide it is printed, and what stands below it. */
import type { PropertyDeclarations } from 'lit'
import { css, html } from 'lit'
import { repeat } from 'lit/directives/repeat.js'
import type { ViewName } from '../../session/view-state.ts'
import { svgFile } from '../../view/svg-file.ts'
import { drawNoMore, drawSoon } from '../draw-soon.ts'
import { benchOffers, stairOffer } from '../pictures/bench-offers.ts'
import type { Offer } from '../pictures/offer.ts'
import { pngOf } from '../pictures/raster.ts'
import { TreeWatch } from '../pictures/tree-watch.ts'
import { viewOffers } from '../pictures/view-offers.ts'
import { say, sayName, sayNumber } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { openViewElement, viewPlace } from './open-view.ts'
import { saveBlob } from './save-blob.ts'
import { toolStyles } from './tool-styles.ts'

/** mm: from a stamp to the long side of a sheet of A2; a text's width on A4 to begin with */
const widths = { least: 30, usual: 170, most: 594 }

/** Views whose pictures are not of the set-up on the bench, so that its words do not belong below them. */
const ofOthers: readonly ViewName[] = ['drills', 'trials', 'board']

/** Views that show the bench's own pictures. */
const withBench: readonly ViewName[] = ['bench', 'lessons', 'lecture']

export class PicturesPanel extends SessionElement {
  static override properties: PropertyDeclarations = {
    ...SessionElement.properties,
    said: { state: true },
  }
  static override styles = [
    sharedStyles,
    toolStyles,
    css`
      .field.width input {
        width: 7.5rem;
      }
      select {
        max-width: 100%;
      }
      /* Two lines from the start: a button that moved under the pointer would not be pressed. */
      .said {
        min-height: 3rem;
      }
    `,
  ]

  declare protected said: string

  #offers: readonly Offer[] = []
  #watch: TreeWatch | undefined

  constructor() {
    super()
    this.said = ''
  }

  override connectedCallback(): void {
    super.connectedCallback()
    this.#watch = new TreeWatch(() => drawSoon(this.#again))
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback()
    this.#watch?.end()
    drawNoMore(this.#again)
  }

  /** What is drawn while the panel is open is on offer as well. */
  override willUpdate(): void {
    const { view } = this.session.look
    const ofBench = withBench.includes(view)
      ? benchOffers(this.session)
      : view === 'orders'
        ? stairOffer(this.session)
        : []
    const element = openViewElement()
    this.#offers = [...ofBench, ...(element ? viewOffers(element) : [])]
    const place = viewPlace()
    if (place) this.#watch?.watchChildren(place)
    if (element) this.#watch?.watchWithin(element)
  }

  override render() {
    if (this.#offers.length === 0)
      return html`<h3>${say('tools.pictures')}</h3>
        <p>${say('tools.picturesNone')}</p>`
    return html`
      <h3>${say('tools.pictures')}</h3>
      <p>${say('tools.picturesHow')}</p>
      <div class="field">
        <label for="which">${say('tools.pictureWhich')}</label>
        <select id="which">
          ${repeat(
            this.#offers,
            ({ of }) => of,
            ({ name }) => html`<option>${name}</option>`,
          )}
        </select>
      </div>
      <div class="field width">
        <label for="width">${say('tools.pictureWidth')}</label>
        <input id="width" type="number" min=${widths.least} max=${widths.most} value=${widths.usual} />
      </div>
      <div class="field">
        <label for="caption">${say('tools.pictureCaption')}</label>
        <input id="caption" type="text" maxlength="400" .value=${this.#setUpInWords()} />
      </div>
      <div class="row">
        <button type="button" @click=${() => this.#save('svg')}>${say('tools.pictureSvg')}</button>
        <button type="button" @click=${() => this.#save('png')}>${say('tools.picturePng')}</button>
      </div>
      <p class="said" role="status">${this.said}</p>
    `
  }

  readonly #again = (): void => this.requestUpdate()

  #setUpInWords(): string {
    if (ofOthers.includes(this.session.look.view)) return ''
    const { inks, paper, press, reading } = this.session.setUp
    return say('tools.pictureSetUp', {
      inks: inks
        .map(({ name, tack }) => say('tools.pictureInk', { name: sayName(name), tack: sayNumber(tack, 0, 1) }))
        .join(', '),
      paper: sayName(paper.name),
      speed: sayNumber(press.speed, 0, 2),
      sheet: say('tools.reportSheetIs', { reading: typeof reading === 'string' ? reading : reading.sheet }),
    })
  }

  /** place of the picture among those offered */
  get #chosen(): number {
    return this.renderRoot.querySelector<HTMLSelectElement>('#which')?.selectedIndex ?? 0
  }

  #field(id: string): string {
    return this.renderRoot.querySelector<HTMLInputElement>(`#${id}`)?.value.trim() ?? ''
  }

  async #save(form: 'svg' | 'png'): Promise<void> {
    const width = Number(this.#field('width'))
    if (!(width >= widths.least && width <= widths.most)) {
      const { least, most } = widths
      this.said = say('tools.pictureWidthWrong', { given: this.#field('width'), least, most })
      return
    }
    const { name: title, description, draw, ofOthers = false } = this.#offers[this.#chosen]
    const name = `${`tackstair ${title.toLowerCase()}`.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/-$/, '')}.${form}`
    try {
      const typed = this.#field('caption')
      const lines = [ofOthers && typed === this.#setUpInWords() ? '' : typed, say('tools.pictureCredit')].filter(
        Boolean,
      )
      const svg = svgFile(await draw(), { title, description, lines }, width)
      const blob = form === 'svg' ? new Blob([svg], { type: 'image/svg+xml' }) : await pngOf(svg, width)
      if (!blob) throw new Error(say('tools.pictureTooLarge'))
      saveBlob(name, blob)
      this.said = say('tools.saved', { name })
    } catch (error) {
      if (!(error instanceof Error)) throw error
      this.said = say('tools.pictureFailed', { reason: error.message })
    }
  }
}

customElements.define('tack-pictures-panel', PicturesPanel)
