/** Words inside the pictures of the bench, in Spanish. */
import type { picture as english } from '../en/picture.ts'
import type { Translated } from '../translated.ts'

export const picture: Translated<typeof english> = {
  'picture.unit': '{unit} {name}',
  'picture.interval': '{seconds} s',
  'picture.since': '{seconds} s después de imprimir {name}',
  'picture.paper': 'papel',
  'picture.blanket': 'mantilla',
  'picture.plate': 'plancha',
  'picture.inkRoller': 'dador',
  'picture.dampening': 'mojado',
  'picture.impression': 'impresor',
  'picture.cylinder': 'cilindro',
  'picture.sheet': 'pliego',
  'picture.pull': 'fuerza, unidades de tiro',
  'picture.notToScale': 'no está a escala',
  'picture.marks.split': 'se dividió la película superior',
  'picture.marks.lifted': 'se dividió una inferior',
  'picture.marks.torn': 'papel arrancado',
  'picture.marks.untouched': 'sin contacto',
  'picture.micrometres': '{value} µm',
  'picture.millimetres': '{value} mm',
}
