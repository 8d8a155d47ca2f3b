/** Ascending whole numbers, those in a row told as first and last: 1, 2, 3, 5 as [1, 3] and [5, 5]. */
export function runsOf(numbers: readonly number[]): [first: number, last: number][] {
  const runs: [number, number][] = []
  for (const number of numbers) {
    const run = runs.at(-1)
    if (run && number === run[1] + 1) run[1] = number
    else runs.push([number, number])
  }
  return runs
}
