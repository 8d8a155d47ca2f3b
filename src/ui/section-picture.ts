/** The section at the nip. */
import { mainInkOf } from '../press/account.ts'
import type { View } from '../view/picture.ts'
import { PictureElement } from './picture-element.ts'
import { say } from './say.ts'

export class SectionPicture extends PictureElement {
  protected override async open(host: HTMLElement): Promise<View> {
    const { createSectionView } = await import('../view/section-view.ts')
    return createSectionView(host)
  }

  protected override summary(): string {
    const { setUp, results, playback, patch } = this.session
    const { films, blanket } = results.accounts(patch)[playback.unit]
    return say('bench.sectionPicture', {
      unit: playback.unit + 1,
      name: setUp.inks[mainInkOf(blanket)].name,
      films: films.filter(({ thickness }) => thickness > 0).length,
    })
  }
}

customElements.define('tack-section-picture', SectionPicture)
