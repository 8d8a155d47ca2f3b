/**
 * The absorbance of an ink of which only the colour is known.
 *
 * Countless spectra have the same colour. The one taken is the smoothest: its curve z(wavelength) has the least sum of
 * squared slopes. Absorbance is ln((1 + e^-z) / (1 + e^(-z-d))), which stays between 0 and d however z runs.
 *
 * Two steps. First a coarse curve made of three fixed shapes; the search for its three factors has one answer, found
 * from any start, whenever any spectrum at all between the bare paper and the darkest print has this colour, and none
 * when there is no such spectrum. Then the smoothest curve, sought from there.
 *
 * Source: least slope after Burns, Numerical methods for smoothest reflectance reconstruction, Color Research and
 * Application 45(1), 2020 (from memory), here with absorbance in place of reflectance; the coarse step is our own.
 */
import { colourWeights } from './data/colour-weights.ts'
import { seenReflectance, type PaperOptics } from './paper-optics.ts'
import { matrixOf, solvePositive } from './positive-matrix.ts'
import { bandCount, weightedSum, type Spectrum } from './spectrum.ts'
import { xyzOfReflectance, type XYZ } from './tristimulus.ts'

const weights: readonly Spectrum[] = [colourWeights.X, colourWeights.Y, colourWeights.Z]

/** The three shapes of the coarse curve: each weight's share of the three, between 0 and 1 in every band. */
const shapes = weights.map((weight) =>
  weight.map((value, band) => value / (weights[0][band] + weights[1][band] + weights[2][band])),
)

/** Sum of squared slopes as a quadratic form; the small diagonal only makes it solvable. */
const slopes = matrixOf(bandCount, bandCount, (i, j) => {
  if (i === j) return (i === 0 || i === bandCount - 1 ? 2 : 4) + 1e-6
  return Math.abs(i - j) === 1 ? -2 : 0
})

/** d: the most a solid absorbs. Chosen: a thousandth of the light comes back through it, far darker than any solid. */
export const mostAbsorbed = Math.log(1000)

/** Largest error left in X, Y or Z (white is 100): far below anything visible. */
const closeEnough = 1e-7
const mostSteps = 60

interface Trial {
  curve: number[]
  absorbance: number[]
  /** X, Y, Z still missing */
  missing: number[]
  /** change of reflectance with the curve, per band */
  response: number[]
}

/** Some absorbance that gives X, Y, Z on this paper, quickly; where there is none, one that comes near. */
export function coarseAbsorbance(optics: PaperOptics, target: XYZ): number[] {
  return coarseCurve(optics, target).absorbance
}

/** The smoothest absorbance that gives X, Y, Z on this paper; where there is none, one that comes near. */
export function smoothAbsorbance(optics: PaperOptics, target: XYZ): number[] {
  const coarse = coarseCurve(optics, target)
  if (error(coarse) > closeEnough) return coarse.absorbance
  const smooth = smoothestCurve(optics, target, coarse)
  return error(smooth) > closeEnough ? coarse.absorbance : smooth.absorbance
}

/** Newton's search for the three factors; each step is kept short, and halved until it brings the colour nearer. */
function coarseCurve(optics: PaperOptics, target: XYZ): Trial {
  let factors = [0, 0, 0]
  let trial = attempt(optics, target, combine(shapes, factors))
  for (let step = 0; step < mostSteps && error(trial) > closeEnough; step++) {
    const { response, missing } = trial
    const change = solvePositive(
      matrixOf(3, 3, (i, j) => sumOf((band) => weights[i][band] * shapes[j][band] * response[band])),
      missing,
    )
    const nearer = [1, 1 / 2, 1 / 4, 1 / 8, 1 / 16, 1 / 32].some((share) => {
      const length = share * Math.min(1, 4 / largest(change))
      const nextFactors = factors.map((factor, i) => factor + length * change[i])
      const next = attempt(optics, target, combine(shapes, nextFactors))
      if (Math.hypot(...next.missing) >= Math.hypot(...missing)) return false
      factors = nextFactors
      trial = next
      return true
    })
    if (!nearer) break
  }
  return trial
}

/** At each step the smoothest curve that meets the colour as far as the response is straight (Lagrange multipliers). */
function smoothestCurve(optics: PaperOptics, target: XYZ, start: Trial): Trial {
  let trial = start
  for (let step = 0; step < mostSteps; step++) {
    const { curve, response, missing } = trial
    const effects = weights.map((weight) => weight.map((value, band) => value * response[band]))
    const bent = effects.map((effect) => solvePositive(slopes, effect))
    const needed = effects.map((effect, i) => weightedSum(effect, curve) + missing[i])
    const smoothest = combine(
      bent,
      solvePositive(
        matrixOf(3, 3, (i, j) => weightedSum(effects[i], bent[j])),
        needed,
      ),
    )
    const change = smoothest.map((value, band) => value - curve[band])
    const length = Math.min(1, 2 / largest(change))
    trial = attempt(
      optics,
      target,
      curve.map((value, band) => value + length * change[band]),
    )
    if (largest(change) < 1e-5 && error(trial) < closeEnough) break
  }
  return trial
}

function attempt(optics: PaperOptics, target: XYZ, curve: number[]): Trial {
  const absorbance = curve.map((z) => softStep(-z) - softStep(-z - mostAbsorbed))
  const inside = absorbance.map((absorbed, band) => optics.body[band] * Math.exp(-absorbed))
  const { entryLoss, internalReflection } = optics
  const response = inside.map((r, band) => {
    const z = curve[band]
    const falling = 1 / (1 + Math.exp(z)) - 1 / (1 + Math.exp(z + mostAbsorbed))
    return (((1 - entryLoss) * (1 - internalReflection) * r) / (1 - internalReflection * r) ** 2) * falling
  })
  const reached = xyzOfReflectance(inside.map((r) => seenReflectance(optics, r)))
  return { curve, absorbance, missing: target.map((value, axis) => value - reached[axis]), response }
}

/** ln(1 + e^x), without overflow. */
function softStep(x: number): number {
  return Math.max(x, 0) + Math.log1p(Math.exp(-Math.abs(x)))
}

function combine(curves: readonly Spectrum[], factors: readonly number[]): number[] {
  return curves[0].map((_, band) => factors.reduce((sum, factor, i) => sum + factor * curves[i][band], 0))
}

function sumOf(term: (band: number) => number): number {
  let sum = 0
  for (let band = 0; band < bandCount; band++) sum += term(band)
  return sum
}

function error(trial: Trial): number {
  return largest(trial.missing)
}

function largest(values: readonly number[]): number {
  return Math.max(...values.map(Math.abs))
}
