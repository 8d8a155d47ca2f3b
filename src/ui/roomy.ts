/** Whether the window has room for panels that can be folded; there they stand open. */
export function isRoomy(): boolean {
  return window.matchMedia('(min-width: 45em) and (min-height: 56.25em)').matches
}
