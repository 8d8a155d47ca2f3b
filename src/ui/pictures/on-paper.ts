/** The colours of pictures that are printed: paper is white, and ink is dear. */
import type { PictureTheme } from '../../view/picture.ts'

export const onPaper: PictureTheme = {
  ground: 0xffffff,
  paper: 0xf4f1ea,
  graphite: 0x1c1b1a,
  line: 0xb9b2a6,
  accent: 0x1c1b1a,
  heavy: 1,
}
