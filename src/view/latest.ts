/**
 * Remembers the latest result of a pure function. While a nip moves only the phase changes, so whatever depends on the
 * run alone is worked out once and not for every picture.
 *
 * @param keyOf what decides the result, where that is not simply everything given
 */
export function latest<const Given extends readonly unknown[], Result>(
  make: (...given: Given) => Result,
  keyOf: (...given: Given) => readonly unknown[] = (...given) => given,
): (...given: Given) => Result {
  let last: { key: readonly unknown[]; result: Result } | null = null
  return (...given) => {
    const key = keyOf(...given)
    if (!last?.key.every((each, i) => Object.is(each, key[i]))) last = { key, result: make(...given) }
    return last.result
  }
}
