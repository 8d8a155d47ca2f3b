/** Whether the pictures have room for letters that can be read from the back row: a projector's full screen. */
export function hasLargeType(): boolean {
  return window.matchMedia('(min-width: 1700px) and (min-height: 900px)').matches
}
