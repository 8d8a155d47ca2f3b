/** A picture of the bench drawn once more, at print size, as a PNG file. */
import type { Session } from '../../session/session.ts'
import type { View } from '../../view/picture.ts'
import { benchPicture } from '../bench-picture.ts'

export const pictureNames = ['section', 'loupe', 'line'] as const
export type PictureName = (typeof pictureNames)[number]

/** px, before the screen's own density: 17 cm wide in print at 300 points an inch where a px is one point. */
export const printSize: Readonly<Record<PictureName, { width: number; height: number }>> = {
  section: { width: 2000, height: 1250 },
  loupe: { width: 1600, height: 1600 },
  line: { width: 2000, height: 500 },
}

const views: Readonly<Record<PictureName, (host: HTMLElement) => Promise<View>>> = {
  section: async (host) => (await import('../../view/section-view.ts')).createSectionView(host),
  loupe: async (host) => (await import('../../view/loupe-view.ts')).createLoupeView(host),
  line: async (host) => (await import('../../view/line-view.ts')).createLineView(host),
}

/** Null where the browser makes no picture of that size. */
export async function drawPicture(session: Session, name: PictureName): Promise<Blob | null> {
  const host = document.createElement('div')
  const { width, height } = printSize[name]
  Object.assign(host.style, { position: 'fixed', left: '-10000px', width: `${width}px`, height: `${height}px` })
  host.setAttribute('aria-hidden', 'true')
  document.body.append(host)
  const view = await views[name](host)
  try {
    view.draw({ ...benchPicture(session), largeType: true })
    // A drawing buffer is only there until the page has had its turn.
    const flat = onGround(host.querySelector('canvas'))
    return await new Promise((resolve) => flat.toBlob(resolve, 'image/png'))
  } finally {
    view.destroy()
    host.remove()
  }
}

/** What is seen through on the page stands on the panel's own colour. */
function onGround(drawn: HTMLCanvasElement | null): HTMLCanvasElement {
  const flat = document.createElement('canvas')
  const context = flat.getContext('2d')
  if (!drawn || !context) return flat
  flat.width = drawn.width
  flat.height = drawn.height
  context.fillStyle = getComputedStyle(document.documentElement).getPropertyValue('--panel')
  context.fillRect(0, 0, flat.width, flat.height)
  context.drawImage(drawn, 0, 0)
  return flat
}
