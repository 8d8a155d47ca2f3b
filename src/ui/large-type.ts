/** Whether the pictures have room for letters that can be read from the back row: a projector's full screen. */
export function hasLargeType(): boolean {
  return window.matchMedia('(min-width: 106.25em) and (min-height: 56.25em)').matches
}
