/**
 * Integral of a smooth function by adaptive Simpson steps: a panel is halved until its two halves agree with it.
 * The tolerance is a share of a first rough value of the integral, so that very small integrals stay accurate too.
 */
export function integrate(height: (at: number) => number, from: number, to: number, tolerance = 1e-9): number {
  const simpson = (left: number, middle: number, right: number, width: number) =>
    ((left + 4 * middle + right) * width) / 6

  function refine(
    from: number,
    to: number,
    left: number,
    middle: number,
    right: number,
    allowed: number,
    depth: number,
  ): number {
    const half = (to - from) / 2
    const leftMiddle = height(from + half / 2)
    const rightMiddle = height(to - half / 2)
    const whole = simpson(left, middle, right, 2 * half)
    const first = simpson(left, leftMiddle, middle, half)
    const second = simpson(middle, rightMiddle, right, half)
    const change = first + second - whole
    if (depth === 0 || Math.abs(change) <= 15 * allowed) return first + second + change / 15
    return (
      refine(from, from + half, left, leftMiddle, middle, allowed / 2, depth - 1) +
      refine(from + half, to, middle, rightMiddle, right, allowed / 2, depth - 1)
    )
  }

  const panels = 64
  const width = (to - from) / panels
  const starts = Array.from({ length: panels }, (_, panel) => from + panel * width)
  const rough = starts.reduce((total, start) => total + Math.abs(height(start + width / 2)) * width, 0)
  return starts.reduce(
    (total, start) =>
      total +
      refine(
        start,
        start + width,
        height(start),
        height(start + width / 2),
        height(start + width),
        (tolerance * rough) / panels,
        30,
      ),
    0,
  )
}
