/** The loupe over the sheet's face, on the page. A press or drag on it moves the row that the section cuts through. */
import { Container } from 'pixi.js'
import { Brush } from './brush.ts'
import { loupeDrawing } from './loupe-drawing.ts'
import { LoupeFace } from './loupe-face.ts'
import type { LoupeLayout } from './loupe-layout.ts'
import { loupeLayout, rowAt } from './loupe-layout.ts'
import type { View } from './picture.ts'
import { createStage } from './stage.ts'

export function createLoupeView(host: HTMLElement, onRow?: (row: number) => void): Promise<View> {
  let shown: { layout: LoupeLayout; rows: number; magnified: number } | null = null

  function listen(canvas: HTMLCanvasElement): void {
    if (!onRow) return
    const move = (event: PointerEvent) => {
      if (event.buttons % 2 === 0 || !shown) return
      const down = event.clientY - canvas.getBoundingClientRect().top
      onRow(rowAt(down / shown.magnified, shown.layout, shown.rows))
    }
    // A finger still scrolls the page up and down, and sets the row where it taps.
    canvas.style.touchAction = 'pan-y'
    canvas.style.cursor = 'row-resize'
    canvas.addEventListener('pointerdown', (event) => {
      canvas.setPointerCapture(event.pointerId)
      move(event)
    })
    canvas.addEventListener('pointermove', move)
  }

  return createStage(
    host,
    () => {
      const root = new Container()
      const face = new LoupeFace()
      const brush = new Brush()
      root.addChild(face.sprite, brush.scene)
      return {
        root,
        draw: (picture, size) => {
          const layout = loupeLayout(size, picture.cells, picture)
          shown = { layout, rows: picture.cells.height, magnified: picture.magnified }
          face.draw(picture, layout)
          brush.paint(loupeDrawing(picture, layout), picture)
        },
        destroy: () => {
          face.destroy()
          brush.destroy()
          root.destroy()
        },
      }
    },
    listen,
  )
}
