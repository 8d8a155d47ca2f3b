/** Carrying an ink to another unit: lifted, moved along, set down or returned. The same for keys and for pointers. */

export type CarryStep =
  | { kind: 'lift'; unit: number }
  /** to this place, from 0 */
  | { kind: 'to'; place: number }
  /** so many places on */
  | { kind: 'by'; places: number }
  | { kind: 'set down' }
  | { kind: 'return' }
  /** at once, without carrying; the place may not exist */
  | { kind: 'send'; unit: number; place: number }

export class CarryEvent extends Event {
  readonly step: CarryStep

  constructor(step: CarryStep) {
    super('carry', { bubbles: true })
    this.step = step
  }
}

/** An ink on its way. */
export interface Carried {
  from: number
  to: number
}

/** px a pointer must move before it carries; less is a click. */
export const dragStarts = 5
