/** Whether the person has asked their system for less motion. */
export function prefersStill(): boolean {
  return window.matchMedia('(prefers-reduced-motion: reduce)').matches
}
