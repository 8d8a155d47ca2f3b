/** The press line, on the page. */
import { Brush } from './brush.ts'
import { lineDrawing } from './line-drawing.ts'
import type { View } from './picture.ts'
import { createStage } from './stage.ts'

export function createLineView(host: HTMLElement): Promise<View> {
  return createStage(host, () => {
    const brush = new Brush()
    return {
      root: brush.scene,
      draw: (picture, size) => brush.paint(lineDrawing(picture, size), picture),
      destroy: () => brush.destroy(),
    }
  })
}
