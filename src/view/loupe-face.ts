/** The sheet's face as one small picture: printed where the nip has passed, as it came where it has not. */
import { Sprite, Texture } from 'pixi.js'
import { latest } from './latest.ts'
import type { LoupeLayout } from './loupe-layout.ts'
import { leftNip } from './loupe-layout.ts'
import { faceImage } from './loupe-image.ts'
import { shownPhase } from './phases.ts'
import type { BenchPicture } from './picture.ts'
import { darkOf } from './tone.ts'

export class LoupeFace {
  readonly sprite = new Sprite()
  private readonly canvas = document.createElement('canvas')
  /** by unit passed, as long as the cells stay the same: what lies after one unit lies before the next */
  private readonly faces = latest<[BenchPicture], Map<number, ImageData>>(
    () => new Map(),
    ({ cells, face, theme }) => [cells, face, theme.paper, darkOf(theme)],
  )
  private shown: { before: ImageData; after: ImageData; edge: number } | null = null

  draw(picture: BenchPicture, { x, y, radius }: LoupeLayout): void {
    const { unit, face, cells } = picture
    const after = this.faceAfter(picture, unit)
    const before = face === 'marks' ? after : this.faceAfter(picture, unit - 1)
    const edge = leftNip(shownPhase(picture), cells.width)
    const { shown } = this
    if (shown?.before !== before || shown.after !== after || shown.edge !== edge) this.show(before, after, edge)
    this.sprite.position.set(x - radius, y - radius)
    this.sprite.setSize(2 * radius)
  }

  destroy(): void {
    this.sprite.destroy({ texture: true, textureSource: true })
  }

  private faceAfter(picture: BenchPicture, unit: number): ImageData {
    const faces = this.faces(picture)
    let image = faces.get(unit)
    if (!image) {
      image = faceImage(picture, unit)
      faces.set(unit, image)
    }
    return image
  }

  private show(before: ImageData, after: ImageData, edge: number): void {
    const { canvas, sprite } = this
    const { width, height } = after
    if (canvas.width !== width || canvas.height !== height || sprite.texture === Texture.EMPTY) {
      Object.assign(canvas, { width, height })
      if (sprite.texture !== Texture.EMPTY) sprite.texture.destroy(true)
      sprite.texture = Texture.from(canvas, true)
      sprite.texture.source.scaleMode = 'nearest'
    }
    const context = canvas.getContext('2d')
    if (!context) throw new Error('This browser gives no drawing surface for the loupe.')
    context.putImageData(before, 0, 0)
    if (edge < width) context.putImageData(after, 0, 0, edge, 0, width - edge, height)
    sprite.texture.source.update()
    this.shown = { before, after, edge }
  }
}
