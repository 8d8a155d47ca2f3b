/** The section at the nip, on the page. */
import { Brush } from './brush.ts'
import type { View } from './picture.ts'
import { sectionDrawing } from './section-drawing.ts'
import { leastSection } from './section-layout.ts'
import { createStage } from './stage.ts'

export function createSectionView(host: HTMLElement): Promise<View> {
  return createStage(host, () => {
    const brush = new Brush()
    return {
      root: brush.scene,
      draw: (picture, size) => {
        const shrink = Math.min(1, size.width / leastSection.width, size.height / leastSection.height)
        brush.scene.scale.set(shrink)
        brush.paint(sectionDrawing(picture, { width: size.width / shrink, height: size.height / shrink }), picture)
      },
      destroy: () => brush.destroy(),
    }
  })
}
