/** What the three numbers of a colour say, in Spanish. */
import type { colour as english } from '../en/colour.ts'
import type { Translated } from '../translated.ts'

export const colour: Translated<typeof english> = {
  'colour.scales': 'Lo que dicen los tres [[colour-numbers|números del color]]:',
  'colour.scale.black': '0 negro',
  'colour.scale.white': '100 blanco',
  'colour.scale.green': '−50 verde',
  'colour.scale.red': '+50 rojo',
  'colour.scale.blue': '−50 azul',
  'colour.scale.yellow': '+50 amarillo',
}
