/** The page's own colours, as the pictures take them. */
import type { PictureTheme } from '../view/picture.ts'
import { colourNumber } from './colour-number.ts'

export function pictureTheme(): PictureTheme {
  const style = getComputedStyle(document.documentElement)
  const token = (name: string) => colourNumber(style.getPropertyValue(`--${name}`).trim())
  return {
    ground: token('panel'),
    paper: token('paper'),
    graphite: token('graphite'),
    line: token('line'),
    accent: token('accent'),
    heavy: parseFloat(style.getPropertyValue('--heavy')),
  }
}
