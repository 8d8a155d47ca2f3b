/** A picture that can be taken along as a file. */
import type { Drawing } from '../../view/svg-file.ts'

export interface Offer {
  /** what it is a picture of, by which it is known again when the pictures on offer change */
  of: unknown
  name: string
  /** what it shows, for those who do not see it */
  description: string
  draw: () => Drawing | Promise<Drawing>
  /** whether it shows other set-ups than the one on the bench, whose words then do not belong below it */
  ofOthers?: boolean
}

/** An element whose picture is not SVG on the page, and which draws it for paper itself. */
export interface Printable extends Element {
  printed: () => Drawing | Promise<Drawing>
  /** what it is called, where no heading stands over it */
  pictureName?: string
  /** its picture's label */
  summary: string
  /** as in an offer */
  ofOthers?: boolean
}

export function isPrintable(element: Element): element is Printable {
  return 'printed' in element && typeof element.printed === 'function'
}
