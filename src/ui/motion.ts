/** Whether the person wants less motion: as they chose here, or else as they have asked their system. */
import { comfort } from './comfort.ts'

export function prefersStill(): boolean {
  const { motion = 'auto' } = comfort().settings
  return motion === 'auto' ? window.matchMedia('(prefers-reduced-motion: reduce)').matches : motion === 'reduced'
}
