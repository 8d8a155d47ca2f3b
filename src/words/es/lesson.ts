/** What a lesson says about the bench while it is being done, in Spanish. */
import type { lesson as english } from '../en/lesson.ts'
import type { Translated } from '../translated.ts'

export const lesson: Translated<typeof english> = {
  'lesson.within':
    '{reading}: se lee {value, number, ::.##} {unit}. Se pide {aim, number, ::.###} {unit}, con un margen de {tolerance, number, ::.###}.',
  'lesson.atLeast':
    '{reading}: se lee {value, number, ::.##} {unit}. Se pide {aim, number, ::.###} {unit} como mínimo.',
  'lesson.atMost': '{reading}: se lee {value, number, ::.##} {unit}. Se pide {aim, number, ::.###} {unit} como máximo.',
  'lesson.reading':
    '{what}{of, select, none {} other { de {of}}}{on, select, none {} other { sobre {on}}}{by, select, none {} other { por {by}}}{patch, select, none {} other { en el parche de {patch}}}{through, select, none {} other { por el filtro {through}}}',
  'lesson.noReading': '{reading}: aquí no se puede leer: {problem}.',
  'lesson.order': 'Las tintas se imprimen en el orden {now}. Se pide {aim}.',
  'lesson.patch': 'El parche que se mira es el de {now}. Se pide el parche de {aim}.',
  'lesson.paper': 'El papel es {now}. Se pide {aim}.',
  'lesson.kind': 'La máquina es {now}. Se pide {aim}.',
  'lesson.waterless': 'La máquina es {now}. Se pide {aim}.',
  'lesson.sheet': 'El pliego que se mira es: {now}. Se pide: {aim}.',
  'lesson.answer': 'Todavía no es eso.',
  'lesson.number': 'El banco da otra lectura. Se pide: {reading}, en el banco tal como está ahora.',
  'lesson.otherNumber': 'El número que escribiste es otro: {taken}. Se pide: {reading}.',
}
