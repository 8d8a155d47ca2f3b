/**
 * The section as bodies: films on the sheet, films below the blanket, and what is stretched between them, for every
 * column at one moment. Heights are px above the paper's surface. At every moment the films hold exactly the ink that
 * was there, and they end with the ink where the computation left it.
 */
import type { Pulled } from './filament.ts'
import { pull } from './filament.ts'
import type { Meeting } from './nip-curve.ts'
import { clamp, meetingAt, soakedIn } from './nip-curve.ts'
import type { Columns } from './section-columns.ts'
import { inPaper, nowhere } from './section-columns.ts'

/** px */
export interface SectionScale {
  /** px per um of film */
  perMicrometre: number
  /** the widest gap shown between sheet and blanket */
  widestGap: number
  /** how deep a torn spot is drawn, and how thick its tuft (the paper is not to the films' scale) */
  tear: number
}

export interface Thread {
  column: number
  /** the layer it is made of, or inPaper */
  layer: number
  /** px above the paper at which its lower slab ends */
  foot: number
  pulled: Pulled
}

export interface Bodies {
  meeting: Meeting[]
  /** px: the paper's surface, below 0 in a torn spot */
  surface: Float64Array
  /** px of the lowest film that lie within the paper */
  soaked: Float64Array
  /** [layer][column] px above the paper */
  sheet: Float64Array[]
  /** px of the blanket's surface */
  blanketSurface: Float64Array
  /** [layer][column] px below the blanket; the last layer is its own film */
  blanket: Float64Array[]
  /** px of paper torn out, below the blanket's films */
  tuft: Float64Array
  threads: Thread[]
  /** px in each column at which the stack will part or has parted; NaN where nothing will */
  plane: Float64Array
}

/** The bodies at `phase` (0 to 1). */
export function bodiesAt(columns: Columns, phase: number, scale: SectionScale): Bodies {
  const { count } = columns
  const layers = columns.before.length
  const rows = () => Array.from({ length: layers }, () => new Float64Array(count))
  const bodies: Bodies = {
    meeting: [],
    surface: Float64Array.from(columns.pitted, (pitted) => -scale.tear * pitted),
    soaked: new Float64Array(count),
    sheet: rows(),
    blanketSurface: new Float64Array(count),
    blanket: rows(),
    tuft: new Float64Array(count),
    threads: [],
    plane: new Float64Array(count).fill(NaN),
  }
  const closed = Float64Array.from({ length: count }, (_, i) => closedHeight(columns, i, phase, scale, bodies))
  const level = closed.reduce((sum, height) => sum + height, 0) / count
  for (let i = 0; i < count; i++) {
    const { meeting, gap } = meetingAt((i + 0.5) / count, phase)
    bodies.meeting.push(meeting)
    // The rubber follows an uneven stack while it is pressed on, and is round again once it stands off.
    const off = clamp(2 * gap)
    const rest = level - closed[i]
    const opening = Math.max(0, gap * scale.widestGap + off * rest)
    bodies.blanketSurface[i] = closed[i] + opening
    const stretch = { column: i, opening, widest: 0.92 * (scale.widestGap + rest) }
    if (meeting === 'apart') bodies.blanket[layers - 1][i] = takeFromSheet(bodies, layers - 1, i)
    else if (meeting === 'parting') part(columns, bodies, stretch, scale)
  }
  return bodies
}

/** Stacks everything in one column as it is in full contact, and returns the height of the blanket's surface. */
function closedHeight(columns: Columns, i: number, phase: number, scale: SectionScale, bodies: Bodies): number {
  const { before, left, lowest, plane } = columns
  const last = before.length - 1
  const fresh = lowest === last
  const held = fresh ? columns.heldAfter[i] * soakedIn((i + 0.5) / columns.count, phase) : columns.heldBefore[i]
  bodies.soaked[i] = held * scale.perMicrometre
  let height = bodies.surface[i]
  before.forEach((film, layer) => {
    const um = film[i] - (layer === lowest ? held : 0)
    if (layer === plane[i])
      bodies.plane[i] = height + (left[layer][i] - (layer === lowest ? held : 0)) * scale.perMicrometre
    bodies.sheet[layer][i] = um * scale.perMicrometre
    height += bodies.sheet[layer][i]
  })
  if (plane[i] === inPaper) bodies.plane[i] = bodies.surface[i]
  return height
}

function takeFromSheet(bodies: Bodies, layer: number, i: number): number {
  const height = bodies.sheet[layer][i]
  bodies.sheet[layer][i] = 0
  return height
}

/** Pulls one column apart at the plane that broke there. */
function part(
  columns: Columns,
  bodies: Bodies,
  { column: i, opening, widest }: { column: number; opening: number; widest: number },
  scale: SectionScale,
): void {
  const { before, left, lowest, heldAfter } = columns
  const plane = columns.plane[i]
  const last = before.length - 1
  const { perMicrometre } = scale
  if (plane === nowhere) {
    bodies.blanket[last][i] = takeFromSheet(bodies, last, i)
    return
  }
  before.forEach((film, layer) => {
    const stays = left[layer][i] - (layer === lowest ? heldAfter[i] : 0)
    bodies.sheet[layer][i] = stays * perMicrometre
    bodies.blanket[layer][i] = (film[i] - left[layer][i]) * perMicrometre
  })
  bodies.soaked[i] = heldAfter[i] * perMicrometre
  if (plane === inPaper) {
    tear(bodies, i, opening, widest, scale)
    return
  }
  const film = { stays: bodies.sheet[plane][i], leaves: bodies.blanket[plane][i] }
  if (film.stays + film.leaves <= 0) return
  const pulled = pull(film, opening, widest)
  bodies.sheet[plane][i] = pulled.lowerSlab
  bodies.blanket[plane][i] = pulled.upperSlab
  let foot = bodies.surface[i]
  for (const layer of bodies.sheet) foot += layer[i]
  bodies.threads.push({ column: i, layer: plane, foot, pulled })
}

/** A spot of the paper comes away: a pit is left, a tuft leaves, fibres stretch between them and tear. */
function tear(bodies: Bodies, i: number, opening: number, widest: number, scale: SectionScale): void {
  const lifted = clamp(opening / (0.35 * widest))
  const depth = scale.tear * lifted
  const surface = bodies.surface[i]
  bodies.surface[i] = surface - depth
  bodies.tuft[i] = depth
  if (lifted === 0) return
  const pulled = pull({ stays: scale.tear, leaves: scale.tear }, opening, widest)
  bodies.threads.push({ column: i, layer: inPaper, foot: surface - depth + openSpots(bodies, i), pulled })
}

/** px of ink left on the sheet in the spots that were not in contact. */
function openSpots(bodies: Bodies, i: number): number {
  return bodies.sheet.reduce((sum, layer) => sum + layer[i], 0)
}
