/**
 * Remembers the latest result of a pure function. While a nip moves only the phase changes, so whatever depends on the
 * run alone is worked out once and not for every picture.
 */
export function latest<const Given extends readonly unknown[], Result>(
  make: (...given: Given) => Result,
): (...given: Given) => Result {
  let last: { given: Given; result: Result } | null = null
  return (...given) => {
    if (!last?.given.every((each, i) => Object.is(each, given[i]))) last = { given, result: make(...given) }
    return last.result
  }
}
