/** The pictures of the bench as files. */
import type { PropertyDeclarations } from 'lit'
import { html } from 'lit'
import { say } from '../say.ts'
import { SessionElement } from '../session-element.ts'
import { sharedStyles } from '../shared-styles.ts'
import { saveBlob } from './save-blob.ts'
import type { PictureName } from './picture-file.ts'
import { drawPicture, pictureNames, printSize } from './picture-file.ts'
import { toolStyles } from './tool-styles.ts'

export class PicturesPanel extends SessionElement {
  static override properties: PropertyDeclarations = { ...SessionElement.properties, said: { state: true } }
  static override styles = [sharedStyles, toolStyles]

  declare protected said: string

  constructor() {
    super()
    this.said = ''
  }

  override render() {
    return html`
      <h3>${say('tools.pictures')}</h3>
      <p>${say('tools.picturesHow', printSize.line)}</p>
      <div class="row">
        ${pictureNames.map(
          (name) =>
            html`<button type="button" @click=${() => this.#save(name)}>${say(`tools.picture.${name}`)}</button>`,
        )}
        <span role="status">${this.said}</span>
      </div>
    `
  }

  async #save(picture: PictureName): Promise<void> {
    const name = `tackstair-${picture}.png`
    try {
      const blob = await drawPicture(this.session, picture)
      if (!blob) throw new Error(say('tools.pictureTooLarge'))
      saveBlob(name, blob)
      this.said = say('tools.saved', { name })
    } catch (error) {
      if (!(error instanceof Error)) throw error
      this.said = say('tools.pictureFailed', { reason: error.message })
    }
  }
}

customElements.define('tack-pictures-panel', PicturesPanel)
