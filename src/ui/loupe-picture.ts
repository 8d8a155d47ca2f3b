/** The face of the sheet through a loupe. */
import type { View } from '../view/picture.ts'
import { PictureElement } from './picture-element.ts'
import { say } from './say.ts'

export class LoupePicture extends PictureElement {
  protected override async open(host: HTMLElement): Promise<View> {
    const { createLoupeView } = await import('../view/loupe-view.ts')
    return createLoupeView(host, (row) => this.session.lookWith({ row }))
  }

  protected override summary(): string {
    return say('bench.loupePicture', { unit: this.session.playback.unit + 1 })
  }
}

customElements.define('tack-loupe-picture', LoupePicture)
