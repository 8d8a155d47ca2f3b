/** Puts plain shapes on a pixi scene: one Graphics for everything drawn, and a set of texts used again and again. */
import type { StrokeInput } from 'pixi.js'
import { Container, Graphics, Text } from 'pixi.js'
import type { BenchPicture } from './picture.ts'
import type { Lettering, Shape } from './shapes.ts'
import { heavier } from './shapes.ts'

/** Pixels for each px of a letter. */
const finestLetters = 6

const typeface = ['Source Sans 3', 'system-ui', 'sans-serif']

export class Brush {
  readonly scene = new Container()
  private readonly graphics = new Graphics()
  private readonly texts: Text[] = []

  constructor() {
    this.scene.addChild(this.graphics)
  }

  /**
   * Draws `shapes` in place of what was there before, with lines as heavy as the theme has them. Letters stand above all
   * else; those that will be magnified are made that much finer.
   */
  paint(shapes: readonly Shape[], { magnified, theme }: Pick<BenchPicture, 'magnified' | 'theme'>): void {
    this.graphics.clear()
    let used = 0
    for (const shape of theme.heavy === 1 ? shapes : heavier(shapes, theme.heavy)) {
      if (shape.kind === 'lettering') this.letter(used++, shape, magnified)
      else this.draw(shape)
    }
    for (; used < this.texts.length; used++) this.texts[used].visible = false
  }

  destroy(): void {
    this.scene.destroy({ children: true })
  }

  private draw(shape: Exclude<Shape, Lettering>): void {
    const { graphics } = this
    const { line, width = 1, opacity = 1 } = shape
    switch (shape.kind) {
      case 'outline':
        graphics.poly(shape.points, shape.closed)
        break
      case 'disc':
        graphics.circle(shape.x, shape.y, shape.radius)
        break
      case 'arc': {
        const { x, y, radius, from, to } = shape
        graphics.moveTo(x + radius * Math.cos(from), y + radius * Math.sin(from)).arc(x, y, radius, from, to)
        break
      }
    }
    if (shape.kind !== 'arc' && shape.fill !== undefined) graphics.fill({ color: shape.fill, alpha: opacity })
    if (line !== undefined) graphics.stroke(strokeOf(line, width, opacity, shape.kind === 'arc'))
  }

  private letter(place: number, { text, x, y, size, colour, anchor, bold, turn }: Lettering, magnified: number): void {
    const drawn = (this.texts[place] ??= this.scene.addChild(new Text({ text: '', style: { fontFamily: typeface } })))
    drawn.visible = true
    const fine = Math.min(finestLetters, magnified * window.devicePixelRatio)
    if (magnified !== 1 && drawn.resolution !== fine) drawn.resolution = fine
    if (drawn.text !== text) drawn.text = text
    const { style } = drawn
    const weight = bold === true ? '600' : '400'
    if (style.fontSize !== size) style.fontSize = size
    if (style.fill !== colour) style.fill = colour
    if (style.fontWeight !== weight) style.fontWeight = weight
    drawn.anchor.set(anchor[0], anchor[1])
    drawn.position.set(x, y)
    drawn.rotation = turn ?? 0
  }
}

function strokeOf(color: number, width: number, alpha: number, butt: boolean): StrokeInput {
  return { color, width, alpha, cap: butt ? 'butt' : 'round', join: 'round' }
}
