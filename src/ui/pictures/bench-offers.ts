/** The pictures of the bench for paper, from the same geometry as on the page. */
import { inkLetters } from '../../session/letters.ts'
import type { Session } from '../../session/session.ts'
import { lineDrawing } from '../../view/line-drawing.ts'
import { loupeDrawing } from '../../view/loupe-drawing.ts'
import { faceImage } from '../../view/loupe-image.ts'
import { leftNip, loupeLayout } from '../../view/loupe-layout.ts'
import { shownPhase } from '../../view/phases.ts'
import type { BenchPicture } from '../../view/picture.ts'
import { pullBars } from '../../view/pull-bars.ts'
import { sectionDrawing } from '../../view/section-drawing.ts'
import type { Shape, Size } from '../../view/shapes.ts'
import { rectangle } from '../../view/shapes.ts'
import { stairDrawing } from '../../view/stair-drawing.ts'
import type { Drawing } from '../../view/svg-file.ts'
import { svgOfShapes, tag } from '../../view/svg-shapes.ts'
import { benchPicture } from '../bench-picture.ts'
import { colourNumber } from '../colour-number.ts'
import { say, sayName, sayNumber } from '../say.ts'
import type { Offer } from './offer.ts'
import { onPaper } from './on-paper.ts'

/** px from bar to bar; a picture of pulls is as tall as they are many */
const barHigh = 26

/** px: chosen so that small letters print at 7 points or more where the picture is 170 mm wide */
const wide = 760
const sizes = {
  section: { width: wide, height: 430 },
  loupe: { width: 480, height: 480 },
  line: { width: wide, height: 210 },
  pulls: { width: 480, height: 6 * barHigh },
  stair: { width: 480, height: 280 },
} as const
type BenchPictureName = keyof typeof sizes
const small = 13

export function stairOffer(session: Session): Offer[] {
  return benchOffers(session).slice(-1)
}

export function benchOffers(session: Session): Offer[] {
  const { setUp, playback } = session
  const { name } = setUp.inks[playback.unit]
  const offer = (picture: BenchPictureName): Offer => ({
    of: picture,
    name: say(`tools.picture.${picture}`),
    description: say(`tools.pictureShows.${picture}`, {
      unit: playback.unit + 1,
      name: sayName(name),
      units: setUp.inks.length,
    }),
    draw: () => benchDrawing(session, picture),
  })
  return (Object.keys(sizes) as BenchPictureName[]).map(offer)
}

/** One picture of a bench, at the moment it shows; `width` in px where it stands beside another. */
export function benchDrawing(session: Session, name: BenchPictureName, width: number = sizes[name].width): Drawing {
  const size = { width, height: name === 'loupe' ? width : sizes[name].height }
  switch (name) {
    case 'section':
      return drawn(sectionDrawing(forPaper(session), size), size)
    case 'loupe':
      return loupe(forPaper(session), size)
    case 'line':
      return drawn(lineDrawing(forPaper(session), size), size)
    case 'pulls':
      return pulls(forPaper(session), { width: size.width, height: (session.playback.unit + 4) * barHigh })
    case 'stair':
      return stair(session, size)
  }
}

function forPaper(session: Session): BenchPicture {
  return { ...benchPicture(session), theme: onPaper, largeType: false, magnified: 1 }
}

function drawn(shapes: readonly Shape[], { width, height }: Size): Drawing {
  return { width, height, markup: clipped(svgOfShapes(shapes), { width, height }) }
}

/** Machine parts reach beyond the picture, as they do on the page, where its edge cuts them off. */
function clipped(markup: string, { width, height }: Size): string {
  return `<clipPath id="edge">${tag('rect', { width, height })}</clipPath>\n<g clip-path="url(#edge)">\n${markup}\n</g>`
}

function loupe(picture: BenchPicture, size: Size): Drawing {
  const layout = loupeLayout(size, picture.cells, picture)
  const { x, y, radius } = layout
  const image = tag('image', {
    x: x - radius,
    y: y - radius,
    width: 2 * radius,
    height: 2 * radius,
    'image-rendering': 'pixelated',
    href: faceAddress(picture),
  })
  return { ...size, markup: `${image}\n${svgOfShapes(loupeDrawing(picture, layout))}` }
}

/** The cells as one small PNG: printed where the nip has passed, as the sheet came where it has not. */
function faceAddress(picture: BenchPicture): string {
  const { unit, face, cells } = picture
  const after = faceImage(picture, unit)
  const before = face === 'marks' ? after : faceImage(picture, unit - 1)
  const edge = leftNip(shownPhase(picture), cells.width)
  const canvas = document.createElement('canvas')
  Object.assign(canvas, { width: cells.width, height: cells.height })
  const context = canvas.getContext('2d')
  if (!context) throw new Error(say('tools.pictureTooLarge'))
  context.putImageData(before, 0, 0)
  if (edge < cells.width) context.putImageData(after, 0, 0, edge, 0, cells.width - edge, cells.height)
  return canvas.toDataURL('image/png')
}

/** At the moment the weakest plane gives. */
function pulls(picture: BenchPicture, size: Size): Drawing {
  const place = { bars: 8, barRoom: size.width - 16, floor: size.height, letters: small }
  return drawn(
    [rectangle(0, 0, size.width, size.height, { fill: onPaper.ground }), ...pullBars(picture, place, 1)],
    size,
  )
}

function stair({ setUp, colours }: Session, size: Size): Drawing {
  const names = setUp.inks.map(({ name }) => name)
  const letters = inkLetters(names)
  const treads = setUp.inks.map(({ name, tack }, unit) => ({
    name: sayName(name),
    letter: letters[unit],
    tack,
    colour: colourNumber(colours.solids[unit]),
  }))
  const words = {
    tack: (tack: number) => sayNumber(tack, 0, 1),
    stepUp: (by: number) => say('bench.stepUp', { by: sayNumber(by, 0, 1) }),
  }
  return drawn(stairDrawing(treads, size, onPaper, words), size)
}
