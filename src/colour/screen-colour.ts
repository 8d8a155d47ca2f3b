import { formatHex, parseHex } from 'culori/fn'
import { colourDifference } from './colour-difference.ts'
import { labOfXYZ, xyzOfLab, type Lab } from './lab.ts'
import { codedLight, insideScreen, xyzOfCodedLight, type ScreenLight } from './screen-light.ts'

/** A colour as a screen can show it, and how far that is from the colour itself. */
export interface ScreenColour {
  /** #rrggbb, fit for CSS */
  readonly hex: string
  /** 0 to 255 */
  readonly bytes: readonly [red: number, green: number, blue: number]
  /** true: the screen cannot show this colour, and the nearest of its hue stands in */
  readonly outsideScreen: boolean
  /** dE00 between the colour and what is shown of it */
  readonly difference: number
}

/** Light this far out of range (half a step of 255) is only rounding. */
const tolerance = 0.5 / 255

/** A colour for an sRGB screen, the coated paper being the screen's white. */
export function screenColour(lab: Lab): ScreenColour {
  const wanted = codedLight(xyzOfLab(lab))
  const outsideScreen = isOutsideScreen(wanted)
  // What is out by rounding alone is not mapped, which would shift its other parts by a step.
  const light = outsideScreen ? insideScreen(wanted) : wanted
  const [red, green, blue] = light.map((part) => Math.round(Math.min(1, Math.max(0, part)) * 255))
  const shown: ScreenLight = [red / 255, green / 255, blue / 255]
  return {
    hex: formatHex({ mode: 'rgb', r: shown[0], g: shown[1], b: shown[2] }),
    bytes: [red, green, blue],
    outsideScreen,
    difference: colourDifference(lab, labOfXYZ(xyzOfCodedLight(shown))),
  }
}

/** Lab of a colour picked on the screen as #rrggbb (or #rgb), by the same reckoning; null when the text is no such colour. */
export function labOfScreenColour(hex: string): Lab | null {
  if (!/^#([0-9a-f]{3}|[0-9a-f]{6})$/i.test(hex)) return null
  const picked = parseHex(hex)
  return picked ? labOfXYZ(xyzOfCodedLight([picked.r, picked.g, picked.b])) : null
}

/** Whether coded light lies beyond what the screen can show. */
function isOutsideScreen(light: ScreenLight): boolean {
  return light.some((part) => part < -tolerance || part > 1 + tolerance)
}
