/** The face of the sheet through a loupe. */
import { mainInkOf } from '../press/account.ts'
import type { BenchPicture, View } from '../view/picture.ts'
import { PictureElement } from './picture-element.ts'
import { say, sayPercent } from './say.ts'

export class LoupePicture extends PictureElement {
  protected override async open(host: HTMLElement): Promise<View> {
    const { createLoupeView } = await import('../view/loupe-view.ts')
    return createLoupeView(host, this.magnified === null ? (row) => this.session.lookWith({ row }) : undefined)
  }

  /** Before a lesson has come to nips, the sheet lies on the table: it has left the last one, and nothing is cut open. */
  protected override picture(): BenchPicture {
    const picture = super.picture()
    return this.knows('nip') ? picture : { ...picture, phase: 1, row: -Infinity }
  }

  /** It is painted cell by cell, in the colours of films upon each other. */
  protected override prepare(mayGoOn: () => boolean): boolean {
    return super.prepare(mayGoOn) && this.session.colours.readyWhile(mayGoOn)
  }

  protected override summary(): string {
    const { setUp, results, playback, patch, look } = this.session
    if (look.known) return say('bench.loupePictureAlone', { unit: playback.unit + 1 })
    const { contact, torn, films, blanket } = results.accounts(patch)[playback.unit]
    return say('bench.loupePicture', {
      unit: playback.unit + 1,
      name: setUp.inks[mainInkOf(blanket)].name,
      split: sayPercent(contact * blanket.broke),
      lifted: sayPercent(contact * films.reduce((sum, { broke }) => sum + broke, 0)),
      torn: sayPercent(contact * torn),
    })
  }
}

customElements.define('tack-loupe-picture', LoupePicture)
