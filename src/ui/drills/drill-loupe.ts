/** The first sheet through the loupe, where all inks print: every cell in the colour of the films that stayed on it. */
import type { PropertyDeclarations, PropertyValues } from 'lit'
import { LitElement, css, html } from 'lit'
import { printCells } from '../../press/cells.ts'
import { runPress } from '../../press/run.ts'
import type { SetUp } from '../../press/setup.ts'
import { Colours } from '../../session/colours.ts'
import { inkInCells } from '../../view/loupe-pixels.ts'
import type { Drawing } from '../../view/svg-file.ts'
import { roundPicture } from '../pictures/round-picture.ts'

/** Cells across: as the bench's loupe, but a quarter of it. */
const cellsAcross = 96

export class DrillLoupe extends LitElement {
  static override properties: PropertyDeclarations = { setUp: { attribute: false }, label: {}, caption: {} }
  static override styles = css`
    figure {
      margin: 0;
    }
    canvas {
      display: block;
      width: 12rem;
      max-width: 100%;
      border: 1px solid #857e72;
      border-radius: 50%;
      background: var(--paper);
      image-rendering: pixelated;
      forced-color-adjust: none;
    }
    figcaption {
      font-size: 0.875rem;
      text-align: center;
    }
  `

  declare setUp: SetUp
  declare label: string
  declare caption: string

  override render() {
    return html`<figure>
      <canvas width=${cellsAcross} height=${cellsAcross} role="img" aria-label=${this.label}></canvas>
      <figcaption>${this.caption}</figcaption>
    </figure>`
  }

  get pictureName(): string {
    return this.caption
  }

  /** its picture's label, for the list of pictures */
  get summary(): string {
    return this.label
  }

  printed(): Drawing {
    const canvas = this.renderRoot.querySelector('canvas')
    if (!canvas) throw new Error('The loupe has drawn nothing yet.')
    return roundPicture(canvas.toDataURL('image/png'), this.caption)
  }

  override updated(changed: PropertyValues): void {
    if (!changed.has('setUp')) return
    const context = this.renderRoot.querySelector('canvas')?.getContext('2d')
    if (!context) throw new Error('This browser gives no drawing surface for the loupe.')
    const run = runPress({ ...this.setUp, reading: 'first' })
    const units = this.setUp.inks.length
    const cells = printCells(run, (1 << units) - 1, { width: cellsAcross, height: cellsAcross })
    const image = new ImageData(cellsAcross, cellsAcross)
    new Colours(this.setUp).paint(inkInCells(cells, units - 1), image.data)
    context.putImageData(image, 0, 0)
  }
}

customElements.define('tack-drill-loupe', DrillLoupe)
