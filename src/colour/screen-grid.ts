/**
 * Brings the many colours of a picture into the screen's range. `insideScreen` takes some 20 microseconds a colour,
 * too long for a picture; here it is asked once for each grid point met, and colours between are interpolated.
 */
import { insideScreen } from './screen-light.ts'

/** Grid points per unit of coded light; 0 and 1 are points, so the edge of the screen's range stays sharp. */
const pointsPerUnit = 32
/** Lowest and highest coded light on the grid, in points: beyond what clear inks on paper reach. */
const lowest = -32
const highest = 44
const side = highest - lowest + 1

const redStep = side * side * 3
const greenStep = side * 3
const blueStep = 3

/** red, green, blue of each grid point once met; NaN before */
let points = new Float32Array(0)

/**
 * What stands in for coded light outside the screen's range, as 0xRRGGBB: interpolated between the four grid points
 * around it.
 *
 * Source: tetrahedral interpolation, as usual in colour tables (Kasson and others, J. Electronic Imaging 4(3), 1995;
 * from memory).
 */
export function bringInsideScreen(red: number, green: number, blue: number): number {
  const r = place(red)
  const g = place(green)
  const b = place(blue)
  const rPart = r - (r | 0)
  const gPart = g - (g | 0)
  const bPart = b - (b | 0)

  // From the lowest corner of the grid cell to the highest, along the axis with the largest part first.
  const most = rPart >= gPart && rPart >= bPart ? redStep : gPart >= bPart ? greenStep : blueStep
  const least = bPart < gPart && bPart <= rPart ? blueStep : gPart <= rPart && most !== greenStep ? greenStep : redStep
  const largest = Math.max(rPart, gPart, bPart)
  const smallest = Math.min(rPart, gPart, bPart)
  const between = rPart + gPart + bPart - largest - smallest

  const first = (r | 0) * redStep + (g | 0) * greenStep + (b | 0) * blueStep
  const second = first + most
  const last = first + redStep + greenStep + blueStep
  const third = last - least
  if (!(points[first] >= 0 && points[second] >= 0 && points[third] >= 0 && points[last] >= 0))
    meet(first, second, third, last)

  const p = points
  const firstShare = 1 - largest
  const secondShare = largest - between
  const thirdShare = between - smallest
  const shownRed = firstShare * p[first] + secondShare * p[second] + thirdShare * p[third] + smallest * p[last]
  const shownGreen =
    firstShare * p[first + 1] + secondShare * p[second + 1] + thirdShare * p[third + 1] + smallest * p[last + 1]
  const shownBlue =
    firstShare * p[first + 2] + secondShare * p[second + 2] + thirdShare * p[third + 2] + smallest * p[last + 2]
  return (((shownRed * 255 + 0.5) | 0) << 16) | (((shownGreen * 255 + 0.5) | 0) << 8) | ((shownBlue * 255 + 0.5) | 0)
}

/** Works out the colour of the grid points not met before. */
function meet(...places: number[]): void {
  if (points.length === 0) points = new Float32Array(side * redStep).fill(NaN)
  for (const at of places.filter((place) => Number.isNaN(points[place]))) {
    const light = [at / redStep, (at % redStep) / greenStep, (at % greenStep) / blueStep].map(
      (point) => (Math.floor(point) + lowest) / pointsPerUnit,
    )
    points.set(
      insideScreen([light[0], light[1], light[2]]).map((part) => Math.max(0, part)),
      at,
    )
  }
}

/** Where coded light lies on the grid; what lies beyond the grid is taken at its edge. */
function place(coded: number): number {
  return Math.min(side - 1.001, Math.max(0, coded * pointsPerUnit - lowest))
}
