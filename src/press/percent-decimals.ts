/** Decimals that a share in percent is written with: whole percent, more exactly where it is small. */
export function percentDecimals(percent: number): 0 | 1 | 3 {
  if (percent >= 9.95 || percent === 0) return 0
  return percent >= 0.095 ? 1 : 3
}
