/** Where the shown spot of the sheet is along the press line. */

/** By phase: distance from the nip in spacings of the line. It lingers at the nip, as all that matters happens there. */
const travel = [
  [0, -0.5],
  [0.2, -0.05],
  [0.5, 0],
  [0.85, 0.06],
  [1, 0.5],
] as const

/** The spot's place, in spacings, the first nip at 0: it ends one nip where it begins the next. */
export function spotPlace(unit: number, phase: number): number {
  const next = Math.max(
    1,
    travel.findIndex(([at]) => phase <= at),
  )
  const [from, start] = travel[next - 1]
  const [to, end] = travel[next]
  return unit + start + ((end - start) * (phase - from)) / (to - from)
}
