/** The sheet's face as one small picture: printed where the nip has passed, as it came where it has not. */
import { Sprite, Texture } from 'pixi.js'
import { latest } from './latest.ts'
import type { LoupeLayout } from './loupe-layout.ts'
import { leftNip } from './loupe-layout.ts'
import { cutRound, inkInCells, paintMarks } from './loupe-pixels.ts'
import { shownPhase } from './phases.ts'
import type { BenchPicture } from './picture.ts'
import { darkOf } from './tone.ts'

interface Faces {
  before: ImageData
  after: ImageData
}

export class LoupeFace {
  readonly sprite = new Sprite()
  private readonly canvas = document.createElement('canvas')
  private readonly faces = latest(facesOf, ({ cells, unit, face, theme }) => [
    cells,
    unit,
    face,
    theme.paper,
    darkOf(theme),
  ])
  private shown: { faces: Faces; edge: number } | null = null

  draw(picture: BenchPicture, { x, y, radius }: LoupeLayout): void {
    const faces = this.faces(picture)
    const edge = leftNip(shownPhase(picture), picture.cells.width)
    if (this.shown?.faces !== faces || this.shown.edge !== edge) this.show(faces, edge)
    this.sprite.position.set(x - radius, y - radius)
    this.sprite.setSize(2 * radius)
  }

  destroy(): void {
    this.sprite.destroy({ texture: true, textureSource: true })
  }

  private show(faces: Faces, edge: number): void {
    const { canvas, sprite } = this
    const { width, height } = faces.after
    if (canvas.width !== width || canvas.height !== height || sprite.texture === Texture.EMPTY) {
      Object.assign(canvas, { width, height })
      if (sprite.texture !== Texture.EMPTY) sprite.texture.destroy(true)
      sprite.texture = Texture.from(canvas, true)
      sprite.texture.source.scaleMode = 'nearest'
    }
    const context = canvas.getContext('2d')
    if (!context) throw new Error('This browser gives no drawing surface for the loupe.')
    context.putImageData(faces.before, 0, 0)
    if (edge < width) context.putImageData(faces.after, 0, 0, edge, 0, width - edge, height)
    sprite.texture.source.update()
    this.shown = { faces, edge }
  }
}

function facesOf({ cells, unit, face, theme, paint }: BenchPicture): Faces {
  const { width, height } = cells
  const picture = (fill: (pixels: Uint8ClampedArray) => void): ImageData => {
    const image = new ImageData(width, height)
    fill(image.data)
    cutRound(image.data, width, height)
    return image
  }
  if (face === 'marks') {
    const marks = picture((pixels) => paintMarks(cells.stages[unit], { unit, width }, theme, pixels))
    return { before: marks, after: marks }
  }
  return {
    before: picture((pixels) => paint(inkInCells(cells, unit - 1), pixels)),
    after: picture((pixels) => paint(inkInCells(cells, unit), pixels)),
  }
}
