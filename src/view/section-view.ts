/** The section at the nip, on the page. */
import { Brush } from './brush.ts'
import type { View } from './picture.ts'
import { sectionDrawing } from './section-drawing.ts'
import { createStage } from './stage.ts'

export function createSectionView(host: HTMLElement): Promise<View> {
  return createStage(host, () => {
    const brush = new Brush()
    return {
      root: brush.scene,
      draw: (picture, size) => brush.paint(sectionDrawing(picture, size)),
      destroy: () => brush.destroy(),
    }
  })
}
