/** Cautions for any step that touches a real press, in Spanish. */
import type { cautions as english } from '../en/cautions.ts'
import type { Translated } from '../translated.ts'

export const cautions: Translated<typeof english> = {
  'teaching-model':
    'Esto es un modelo para aprender: no ajustes con él ninguna máquina. Mandan el fabricante de la máquina, el proveedor de la tinta, las normas de la casa y la ley del lugar, bajo la dirección de un maquinista cualificado.',
  'guarded-nips':
    'En una máquina real, las líneas de contacto entrantes llevan protección, y la máquina se para y se bloquea antes de que nadie meta la mano.',
  'hand-cleaning': 'No limpies nunca a mano rodillos en marcha.',
  solvents:
    'Lavadores, reductores y disolventes, los líquidos que limpian o aligeran la tinta: lee la ficha de datos de seguridad, ventila, ponte guantes, aléjalos de todo lo que pueda prenderlos y echa los trapos en un cubo con tapa.',
}
