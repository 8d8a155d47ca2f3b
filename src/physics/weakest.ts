/**
 * Which plane breaks. The local strength of every ink plane is Weibull distributed with one modulus m and scale F_j;
 * the weakest breaks first. For Weibull variables of one modulus the chance that plane j is the weakest is exactly
 * F_j^-m / sum F_k^-m, and the strength at which the stack gives way is Weibull again, with scale (sum F_k^-m)^(-1/m)
 * (minimum of independent Weibull variables, W. Weibull, J. Applied Mechanics 18, 1951).
 */

/** The weight F^-m of a plane, from ln F (tack units) and the evenness m. */
export function planeWeight(lnPull: number, evenness: number): number {
  return Math.exp(-evenness * lnPull)
}

/** Scale (tack units) of the pull at which the weakest of the planes gives way; `weight` is the sum of their weights. */
export function pullOfWeakest(weight: number, evenness: number): number {
  return Math.pow(weight, -1 / evenness)
}

/** The share of places in which each plane is the weakest; pulls in tack units, Infinity for a plane that cannot break. */
export function weakestShares(pulls: readonly number[], evenness: number): number[] {
  const weights = pulls.map((pull) => planeWeight(Math.log(pull), evenness))
  const sum = weights.reduce((total, weight) => total + weight, 0)
  return weights.map((weight) => weight / sum)
}
