import { modeLab65, modeLrgb, modeOklab, modeOklch, modeRgb, modeXyz50, useMode } from 'culori/fn'

/** The colour library loads only the colour spaces named; this names what a colour difference needs. */
export function useLab65(): void {
  useMode(modeLab65)
}

/** What getting a colour onto a screen needs. */
export function useScreenModes(): void {
  for (const mode of [modeRgb, modeLrgb, modeXyz50, modeOklab, modeOklch]) useMode(mode)
}
