/** The press line from the side. */
import type { View } from '../view/picture.ts'
import { PictureElement } from './picture-element.ts'
import { say } from './say.ts'

export class LinePicture extends PictureElement {
  protected override async open(host: HTMLElement): Promise<View> {
    const { createLineView } = await import('../view/line-view.ts')
    return createLineView(host)
  }

  protected override summary(): string {
    return say('bench.linePicture', {
      units: this.session.setUp.inks.length,
      unit: this.session.playback.unit + 1,
    })
  }
}

customElements.define('tack-line-picture', LinePicture)
