/** A small mark for each ink, repeated over its films, so that films are told apart without any colour. */
import type { Shape } from './shapes.ts'
import { stroke } from './shapes.ts'

/** px from a mark's middle to its ends */
type Draw = (x: number, y: number, reach: number, colour: number) => Shape[]

const line =
  (...points: number[]): Draw =>
  (x, y, reach, colour) => [
    stroke(
      points.map((part, i) => (i % 2 === 0 ? x : y) + part * reach),
      colour,
      1.25,
    ),
  ]

const dot: Draw = (x, y, reach, colour) => [{ kind: 'disc', x, y, radius: Math.max(1, 0.32 * reach), fill: colour }]
const ring: Draw = (x, y, reach, colour) => [{ kind: 'disc', x, y, radius: 0.6 * reach, line: colour, width: 1.25 }]
const cross: Draw = (...at) => [...line(-0.8, 0, 0.8, 0)(...at), ...line(0, -0.8, 0, 0.8)(...at)]

/** By ink, from the first unit's on. */
const marks: Draw[] = [
  dot,
  line(-0.7, 0.7, 0.7, -0.7),
  line(-0.7, -0.7, 0.7, 0.7),
  line(-0.9, 0, 0.9, 0),
  line(0, -0.8, 0, 0.8),
  cross,
  ring,
  line(-0.8, 0.5, 0, -0.5, 0.8, 0.5),
]

/** The mark of ink `ink` about a point. */
export function inkMark(ink: number, x: number, y: number, reach: number, colour: number): Shape[] {
  return marks[ink % marks.length](x, y, reach, colour)
}
