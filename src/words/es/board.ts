/** The instructor’s board in Spanish: results handed in, read and counted; and the file a learner hands in. */
import type { board as english } from '../en/board.ts'
import type { Translated } from '../translated.ts'

export const board: Translated<typeof english> = {
  'board.refused.long': 'El archivo tiene {length} caracteres; se admiten {most}.',
  'board.refused.noJson': 'Este no es un archivo de resultados: no es JSON.',
  'board.refused.format': 'Este no es un archivo de resultados de este programa.',
  'board.refused.version': 'Nunca ha habido tal versión del archivo de resultados.',
  'board.refused.newer':
    'El archivo es de la versión {version}, hecho con una versión más nueva de este programa; este lee hasta la versión {most}.',
  'board.refused.field': 'Falta un valor o no se admite: {field}.',
}
