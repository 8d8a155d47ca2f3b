/**
 * What the bench draws: everything a picture needs, handed in from outside. A view keeps nothing of its own, so the
 * same picture always looks the same, and a picture lost with its graphics context is drawn again from its state.
 */
import type { NipAccount } from '../press/account.ts'
import type { CellPrint } from '../press/cell-stage.ts'
import type { Run } from '../press/run.ts'

/** Colours of everything that is not ink, 0xRRGGBB. */
export interface PictureTheme {
  /** behind everything */
  ground: number
  paper: number
  /** text, outlines of machine parts */
  graphite: number
  /** faint lines, machine parts' faces */
  line: number
  /** the mark of what is current, and nothing else */
  accent: number
  /** how heavy lines are, of their usual weight: 1, or more for high contrast */
  heavy: number
}

/** Every text of the pictures, already in the reader's language. */
export interface PictureWords {
  /** by unit: its name under the press line, such as "1 black" */
  units: string[]
  /** time between two nips, such as "0.45 s" */
  interval: string
  /** the time a sheet has been on its way from a unit (from 0), such as "0.31 s after cyan was printed" */
  since: (seconds: number, unit: number) => string
  paper: string
  blanket: string
  plate: string
  inkRoller: string
  dampening: string
  impression: string
  sheet: string
  /** heading of the pull bars */
  pull: string
  /** that the paper is not drawn to the films' scale */
  notToScale: string
  /** what became of a spot, for the legend of the marks */
  marks: Record<'split' | 'lifted' | 'torn' | 'untouched', string>
  /** a length for a scale bar, such as "1 µm" or "0.25 mm", from um */
  length: (um: number) => string
  /** a pull for a bar's end, such as "14.2", from tack units */
  tack: (pull: number) => string
}

export interface BenchPicture {
  run: Run
  /** the patch shown; its bit i says that unit i prints there */
  patch: number
  /** the nips of that patch, by unit */
  accounts: NipAccount[]
  /** that patch, cell by cell */
  cells: CellPrint
  /** um, side of one cell */
  cellSide: number
  /** the unit whose nip is shown, from 0 */
  unit: number
  /** 0 to 1 within the nip: arrival, contact, opening, filaments, leaving (see phases.ts) */
  phase: number
  /** row of cells through which the section cuts, from 0 at the top of the loupe */
  row: number
  /** 0xRRGGBB of each ink's solid, by unit */
  inkColours: number[]
  /** 0xRRGGBB of um by ink, as seen on this paper; for the same `cells` always the same colours, as with `paint` */
  colourOf: (amounts: ArrayLike<number>) => number
  /** colours whole pictures: um of each ink in each cell, to red, green, blue and opacity (0 to 255) of each cell */
  paint: (films: readonly Float32Array[], pixels: Uint8ClampedArray) => void
  /** one or two letters for each ink, so that inks are told apart without colour */
  inkLetters: string[]
  /** what the loupe shows: the ink as seen, or marks for what broke in each cell */
  face: 'ink' | 'marks'
  theme: PictureTheme
  words: PictureWords
  /** false: nothing moves; the phase is shown as the nearest of five still pictures */
  motion: boolean
  /** letters for the back row of a lecture hall */
  largeType: boolean
  /** px on the page for each px of the drawing: above 1 everything in it is larger, as for a lecture */
  magnified: number
  /** whether the loupe marks where the section cuts */
  cut: boolean
}

/** One drawn picture in the page. It fills its host element and draws only when told to. */
export interface View {
  draw: (picture: BenchPicture) => void
  /** to be called when the host's size, or the pixel density, has changed */
  resize: () => void
  destroy: () => void
}
