/** Puts together what the views draw. All but the phase stays the same between two changes of the session. */
import { pictureCells } from '../session/results.ts'
import { inkLetters } from '../session/letters.ts'
import type { Session } from '../session/session.ts'
import type { BenchPicture, PictureWords } from '../view/picture.ts'
import { colourNumber } from './colour-number.ts'
import { hasLargeType } from './large-type.ts'
import { prefersStill } from './motion.ts'
import { pictureTheme } from './picture-theme.ts'
import { say, sayNumber } from './say.ts'
import { textScale } from './text-scale.ts'

/** um: the loupe shows one millimetre. */
const loupeSide = 1000

let made = new WeakMap<Session, { results: unknown; look: unknown; picture: BenchPicture }>()

/** The picture of the session as it is now; the last one made of each session is kept. */
export function benchPicture(session: Session): BenchPicture {
  const { results, look, playback } = session
  let last = made.get(session)
  if (last?.results !== results || last.look !== look) {
    last = { results, look, picture: makePicture(session) }
    made.set(session, last)
  }
  const { unit, phase } = playback
  return { ...last.picture, unit, phase, motion: !prefersStill(), largeType: hasLargeType() }
}

/** results whose cells are being printed, by session */
const begun = new WeakMap<Session, unknown>()

/**
 * Prints the cells of the picture for as long as it may; whether all are there. What a change has overtaken is not begun
 * over and over: the new cells are printed at once, so that whoever drags a control sees what it does.
 */
export function prepareCells(session: Session, mayGoOn: () => boolean): boolean {
  const { results, patch } = session
  const isOvertaken = begun.has(session) && begun.get(session) !== results
  const isDone = results.cellsWhile(patch, () => isOvertaken || mayGoOn()) !== undefined
  if (isDone) begun.delete(session)
  else begun.set(session, results)
  return isDone
}

/** To be called when nobody waits for the cells any more: nothing has overtaken them then. */
export function leaveCells(session: Session): void {
  begun.delete(session)
}

/** To be called when the page's colours have changed. */
export function forgetPicture(): void {
  made = new WeakMap()
}

function makePicture(session: Session): BenchPicture {
  const { setUp, results, patch, look, playback, colours } = session
  return {
    run: results.run,
    patch,
    accounts: results.accounts(patch),
    cells: results.cells(patch),
    cellSide: loupeSide / pictureCells,
    unit: playback.unit,
    phase: playback.phase,
    row: look.row,
    inkColours: colours.solids.map(colourNumber),
    colourOf: (amounts) => colourNumber(colours.of(amounts)),
    paint: (films, pixels) => colours.paint(films, pixels),
    inkLetters: inkLetters(setUp.inks.map((ink) => ink.name)),
    face: look.face,
    theme: pictureTheme(),
    words: words(session),
    motion: !prefersStill(),
    largeType: hasLargeType(),
    magnified: textScale(),
    cut: true,
  }
}

/** A word that the open lesson has not come to stays out of the pictures. */
function words({ setUp, look: { known } }: Session): PictureWords {
  const once = (term: string, word: string) => (known === null || known.has(term) ? word : '')
  return {
    units: setUp.inks.map(({ name }, unit) => say('picture.unit', { unit: unit + 1, name })),
    interval: once('interval', say('picture.interval', { seconds: sayNumber(setUp.press.interval, 0, 2) })),
    since: (seconds, unit) => say('picture.since', { seconds: sayNumber(seconds, 2), name: setUp.inks[unit].name }),
    paper: say('picture.paper'),
    blanket: once('blanket', say('picture.blanket')),
    plate: once('plate', say('picture.plate')),
    inkRoller: once('form-roller', say('picture.inkRoller')),
    dampening: once('dampening', say('picture.dampening')),
    // It has a plain name as well, which everybody knows.
    impression: once('impression-cylinder', say('picture.impression')) || say('picture.cylinder'),
    sheet: say('picture.sheet'),
    pull: once('pull', say('picture.pull')),
    notToScale: say('picture.notToScale'),
    marks: {
      split: say('picture.marks.split'),
      lifted: say('picture.marks.lifted'),
      torn: say('picture.marks.torn'),
      untouched: say('picture.marks.untouched'),
    },
    length: (um) =>
      um < 100
        ? say('picture.micrometres', { value: sayNumber(um, 0, 2) })
        : say('picture.millimetres', { value: sayNumber(um / 1000, 0, 2) }),
    tack: (pull) => sayNumber(pull, 1),
  }
}
