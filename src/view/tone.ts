/** Darker, lighter, between: the few things a picture does to a colour that was computed elsewhere. */

/** A colour `share` of the way from one 0xRRGGBB to another. */
export function between(from: number, to: number, share: number): number {
  let mixed = 0
  for (const shift of [16, 8, 0]) {
    const a = (from >> shift) & 255
    const b = (to >> shift) & 255
    mixed |= Math.round(a + (b - a) * share) << shift
  }
  return mixed
}

/** Relative luminance, 0 to 1 (IEC 61966-2-1 with its curve taken as a square, near enough to choose an outline by). */
function luminance(colour: number): number {
  const part = (shift: number) => (((colour >> shift) & 255) / 255) ** 2
  return 0.2126 * part(16) + 0.7152 * part(8) + 0.0722 * part(0)
}

/** A darker outline for a flat fill; a lighter one where the fill is too dark to have a darker. */
export function outlineOf(fill: number): number {
  return luminance(fill) > 0.04 ? between(fill, 0x000000, 0.42) : between(fill, 0xffffff, 0.42)
}

/** The darker of a theme's two main colours: drawn upon paper, which is light in every theme. */
export function darkOf({ ground, graphite }: { ground: number; graphite: number }): number {
  return isDark({ ground, graphite }) ? ground : graphite
}

function isDark({ ground, graphite }: { ground: number; graphite: number }): boolean {
  return luminance(ground) < luminance(graphite)
}

/** Behind the press line: its own ground, or in the dark a lighter one, as black ink would be lost on black. */
export function hallOf(theme: { ground: number; graphite: number }): number {
  return isDark(theme) ? between(theme.ground, theme.graphite, 0.2) : theme.ground
}

/** Bare metal before that. */
export function metalOf(theme: { ground: number; graphite: number }): number {
  return between(theme.ground, theme.graphite, isDark(theme) ? 0.4 : 0.1)
}

/** The blanket's rubber: letters in the theme's graphite are read on it, in the dark and in high contrast as well. */
export function rubberOf(theme: { ground: number; line: number; graphite: number }): number {
  return isDark(theme) ? between(theme.ground, theme.graphite, 0.35) : between(theme.line, theme.graphite, 0.12)
}

/** What stands for air in a section: light paper and black ink must both stand out from it, in the dark as well. */
export function airOf({ ground, line, graphite }: { ground: number; line: number; graphite: number }): number {
  return isDark({ ground, graphite }) ? between(ground, graphite, 0.55) : between(ground, line, 0.45)
}
