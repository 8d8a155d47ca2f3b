/** The plain shapes every picture is made of, back to front. No library draws them here; brush.ts does, on the page. */

/** A filled or outlined outline; or open lines, where it is not closed. */
export interface Outline {
  kind: 'outline'
  /** x, y in turn; px */
  points: number[]
  closed: boolean
  fill?: number
  /** 0 to 1, of fill and line alike */
  opacity?: number
  line?: number
  /** px */
  width?: number
}

interface Disc {
  kind: 'disc'
  x: number
  y: number
  radius: number
  fill?: number
  opacity?: number
  line?: number
  width?: number
}

/** A part of a ring, from one angle on to a larger one (clockwise on the screen, 0 to the right). */
interface Arc {
  kind: 'arc'
  x: number
  y: number
  /** px to the middle of the stroke */
  radius: number
  from: number
  to: number
  line: number
  width: number
  opacity?: number
}

export interface Lettering {
  kind: 'lettering'
  text: string
  x: number
  y: number
  /** px */
  size: number
  colour: number
  /** which point of the text stands at x, y: 0 left or top, 0.5 middle, 1 right or bottom */
  anchor: readonly [number, number]
  bold?: boolean
  /** radians, about the anchor */
  turn?: number
}

export type Shape = Outline | Disc | Arc | Lettering

/** px, and how large letters are on it */
export interface Size {
  width: number
  height: number
}

export function rectangle(x: number, y: number, width: number, height: number, look: Partial<Outline>): Outline {
  return {
    kind: 'outline',
    points: [x, y, x + width, y, x + width, y + height, x, y + height],
    closed: true,
    ...look,
  }
}

/** An open line through points. */
export function stroke(points: number[], line: number, width: number, opacity = 1): Outline {
  return { kind: 'outline', points, closed: false, line, width, opacity }
}

/** The same with lines `by` times as heavy. Arcs stay: those are mostly films, and as thick as films are. */
export function heavier(shapes: readonly Shape[], by: number): Shape[] {
  return shapes.map((shape) =>
    (shape.kind === 'outline' || shape.kind === 'disc') && shape.line !== undefined
      ? { ...shape, width: by * (shape.width ?? 1) }
      : shape,
  )
}

/** px of small letters, for the desk or for the back row. */
export function letterSize(largeType: boolean): number {
  return largeType ? 20 : 13
}

/** px of a text, near enough to know whether it fits: half an em a letter. */
export function textWidth(text: string, size: number): number {
  return 0.5 * size * text.length
}
